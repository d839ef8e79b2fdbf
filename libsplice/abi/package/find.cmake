# find_package(libsplice) gives the target libsplice::splice: from what is installed, and from a folder
# in which the project is built, as libsplice_DIR or in CMAKE_PREFIX_PATH.
include(CMakePackageConfigHelpers)
set(package_folder ${CMAKE_INSTALL_LIBDIR}/cmake/libsplice)
configure_package_config_file(${CMAKE_CURRENT_LIST_DIR}/libspliceConfig.cmake.in
    ${PROJECT_BINARY_DIR}/cmake/libspliceConfig.cmake INSTALL_DESTINATION ${package_folder})
write_basic_package_version_file(${PROJECT_BINARY_DIR}/cmake/libspliceConfigVersion.cmake
    COMPATIBILITY SameMinorVersion)
export(TARGETS libsplice_shared NAMESPACE libsplice::
    FILE ${PROJECT_BINARY_DIR}/cmake/libspliceTargets.cmake)
