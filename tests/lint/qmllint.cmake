# cmake -DPROGRAM=qmllint -DROOT=… -DBUILD=… -DQT_QML=… -P qmllint.cmake: fails on every warning of
# qmllint (.qmllint.ini says what is one), and on a QML file that belongs to no module, since its
# types cannot be known.
file(GLOB_RECURSE files RELATIVE ${ROOT} ${ROOT}/mobile/*.qml)
# Which files make up a module stands in the resource files that the build writes.
file(GLOB_RECURSE resources ${BUILD}/mobile/*.qrc)
set(listed "")
set(options "")
foreach(resource IN LISTS resources)
    file(READ ${resource} text)
    string(APPEND listed "${text}")
    list(APPEND options --resource ${resource})
endforeach()

list(LENGTH files count)
if(count EQUAL 0)
    message(FATAL_ERROR "no QML file below ${ROOT}/mobile")
endif()
set(strays "")
foreach(file IN LISTS files)
    string(FIND "${listed}" "${ROOT}/${file}<" place)
    if(place EQUAL -1)
        string(APPEND strays "\n${file}")
    endif()
endforeach()
execute_process(COMMAND ${PROGRAM} --bare -I ${QT_QML} -I ${BUILD}/qml -I ${BUILD}/mobile/app ${options} ${files}
    WORKING_DIRECTORY ${ROOT} RESULT_VARIABLE status)
if(NOT strays STREQUAL "")
    message(FATAL_ERROR "in no QML module of the build:${strays}")
endif()
if(NOT status EQUAL 0)
    message(FATAL_ERROR "qmllint has warnings")
endif()
message(STATUS "${count} QML files without a warning")
