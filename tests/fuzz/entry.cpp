#include "tests/fuzz/target.h"

#include <cstddef>
#include <cstdint>
#include <cstdio>

void lidlark::fuzz::broken(const char *promise)
{
    std::fprintf(stderr, "broken: %s\n", promise);
    __builtin_trap();
}

/// What libFuzzer calls, again and again.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    lidlark::fuzz::LIDLARK_FUZZ_TARGET({reinterpret_cast<const char *>(data), size});
    return 0;
}
