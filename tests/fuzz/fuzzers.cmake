# Every target as a program of its own, with the core under the address and undefined behaviour
# sanitizers. Nobody's normal run needs this, so its packages are installed by hand:
#   apt-get install clang-16 libclang-rt-16-dev
# (clang 14 cannot read GCC 12's <ranges>.) Checks of libstdc++ and assertions are on.
if(NOT CMAKE_CXX_COMPILER_ID STREQUAL "Clang")
    message(FATAL_ERROR "The fuzzers are built with clang: -DCMAKE_CXX_COMPILER=clang++-16")
endif()
add_compile_options(-O1 -g -fno-omit-frame-pointer -fsanitize=fuzzer-no-link,address,undefined
    -fno-sanitize-recover=all -D_GLIBCXX_ASSERTIONS)
add_link_options(-fsanitize=address,undefined)
add_subdirectory(core)
add_subdirectory(tests/fuzz)
