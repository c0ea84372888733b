#include "core/box/box_code.h"

#include "core/base/digest.h"

#include <string_view>

namespace lidlark::box {

namespace {

// No letter that is taken for a digit, and no U: a code spells no word by chance.
// Source: Douglas Crockford, "Base 32" (crockford.com/base32.html), encode symbols.
constexpr std::string_view signs = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

} // namespace

std::string boxCode(const BoxId &box)
{
    std::uint64_t rest = leadingEight(blake2b("box code " + box.value));
    std::string code;
    for (int i = 0; i < 4; ++i) {
        code += signs[rest % signs.size()];
        rest /= signs.size();
    }
    return code.substr(0, 2) + "-" + code.substr(2);
}

} // namespace lidlark::box
