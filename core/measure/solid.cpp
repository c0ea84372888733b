#include "core/measure/solid.h"

#include <cmath>
#include <optional>

namespace lidlark::measure {

namespace {

struct Form {
    std::string_view name;
    Shape shape;
    std::size_t sizes;
};

constexpr std::array<Form, 5> forms{{{"sphere", Shape::Sphere, 1},
                                     {"disc", Shape::Cylinder, 2},
                                     {"cylinder", Shape::Cylinder, 2},
                                     {"box", Shape::Box, 3},
                                     {"ellipsoid", Shape::Ellipsoid, 3}}};

std::optional<Form> formOf(std::string_view name)
{
    for (const Form &form : forms) {
        if (form.name == name)
            return form;
    }
    return std::nullopt;
}

Error invalid(std::string reason)
{
    return {ErrorCode::Invalid, std::move(reason)};
}

} // namespace

Result<Solid> solidFrom(std::string_view shape, const std::vector<double> &mm)
{
    const std::optional<Form> form = formOf(shape);
    if (!form)
        return invalid("shape: sphere, disc, cylinder, box or ellipsoid");
    if (mm.size() != form->sizes)
        return invalid("mm: a " + std::string(shape) + " has " + std::to_string(form->sizes) +
                       (form->sizes == 1 ? " size" : " sizes"));
    for (const double size : mm) {
        if (!std::isfinite(size) || size <= 0)
            return invalid("mm: each size is a number above zero");
        if (size < leastMm || size > mostMm)
            return invalid("mm: are these millimetres? Sizes are 0.1 to 2000");
    }
    switch (form->shape) {
    case Shape::Sphere:
        return Solid(form->shape, {mm[0], mm[0], mm[0]});
    case Shape::Cylinder:
        return Solid(form->shape, {mm[0], mm[0], mm[1]});
    default:
        return Solid(form->shape, {mm[0], mm[1], mm[2]});
    }
}

} // namespace lidlark::measure
