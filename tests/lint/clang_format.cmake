# cmake -DPROGRAM=clang-format -DROOT=… -P clang_format.cmake: fails where a C++ file of the project
# is laid out in another way than .clang-format says.
file(GLOB_RECURSE files ${ROOT}/core/*.cpp ${ROOT}/core/*.h ${ROOT}/mobile/*.cpp ${ROOT}/mobile/*.h
    ${ROOT}/tests/*.cpp ${ROOT}/tests/*.h)
list(LENGTH files count)
if(count EQUAL 0)
    message(FATAL_ERROR "no C++ file below ${ROOT}")
endif()
execute_process(COMMAND ${PROGRAM} --dry-run -Werror --style=file:${ROOT}/.clang-format ${files}
    RESULT_VARIABLE status)
if(NOT status EQUAL 0)
    message(FATAL_ERROR "clang-format would change some of ${count} files; clang-format -i does it")
endif()
message(STATUS "${count} files are laid out as .clang-format says")
