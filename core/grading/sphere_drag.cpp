#include "core/grading/sphere_drag.h"

#include <cassert>
#include <cmath>

namespace lidlark::grading {

double sphereDrag(double reynolds)
{
    assert(reynolds > 0);
    const double creeping = 24 / reynolds * (1 + 0.15 * std::pow(reynolds, 0.681));
    return creeping + 0.407 / (1 + 8710 / reynolds);
}

} // namespace lidlark::grading
