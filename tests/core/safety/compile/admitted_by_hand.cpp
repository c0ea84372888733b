// Must not compile: an Admitted that the gate never saw.
#include "core/safety/admit.h"

lidlark::safety::Admitted forge()
{
#if defined(FORGE_EMPTY)
    return lidlark::safety::Admitted();
#elif defined(FORGE_BRACES)
    return {};
#elif defined(FORGE_DEFAULT)
    lidlark::safety::Admitted admitted;
    return admitted;
#elif defined(FORGE_SUBCLASS)
    struct Forged : lidlark::safety::Admitted {
    };
    return Forged{};
#endif
}

#if defined(FORGE_EDIT)
void loosen(lidlark::safety::Admitted &admitted)
{
    admitted.m_cautions = {};
}
#endif
