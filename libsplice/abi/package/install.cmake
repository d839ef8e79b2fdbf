# What is installed, by component: runtime, development, tool, tables, docs, sqlite. The C headers, the
# library, the program, the tables and the pages; none of the C++ headers.
set(here ${CMAKE_CURRENT_LIST_DIR})
set(LIBSPLICE_ZSH_FOLDER vendor-completions CACHE STRING
    "Folder of share/zsh where completions go: Debian's, elsewhere site-functions")

install(TARGETS libsplice_shared EXPORT libspliceTargets
    LIBRARY DESTINATION ${CMAKE_INSTALL_LIBDIR}
        COMPONENT runtime NAMELINK_COMPONENT development)
install(FILES
        ${PROJECT_SOURCE_DIR}/libsplice/abi/include/splice.h
        ${PROJECT_SOURCE_DIR}/libsplice/abi/include/splice_base.h
        ${PROJECT_SOURCE_DIR}/libsplice/abi/include/splice_book.h
        ${PROJECT_SOURCE_DIR}/libsplice/abi/include/splice_plugin.h
    DESTINATION ${CMAKE_INSTALL_INCLUDEDIR}/libsplice COMPONENT development)

install(EXPORT libspliceTargets NAMESPACE libsplice::
    DESTINATION ${package_folder} COMPONENT development)
install(FILES
        ${PROJECT_BINARY_DIR}/cmake/libspliceConfig.cmake
        ${PROJECT_BINARY_DIR}/cmake/libspliceConfigVersion.cmake
    DESTINATION ${package_folder} COMPONENT development)

# The prefix is found from where the file lies, so that the whole may be moved.
file(RELATIVE_PATH prefix_from_pkgconfig
    ${CMAKE_INSTALL_FULL_LIBDIR}/pkgconfig ${CMAKE_INSTALL_PREFIX})
configure_file(${here}/libsplice.pc.in ${PROJECT_BINARY_DIR}/package/libsplice.pc @ONLY)
install(FILES ${PROJECT_BINARY_DIR}/package/libsplice.pc
    DESTINATION ${CMAKE_INSTALL_LIBDIR}/pkgconfig COMPONENT development)

if(LIBSPLICE_TOOL)
    install(TARGETS splice RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR} COMPONENT tool)
    # Its man pages, and what the shells need to complete it; zsh looks in a folder of its own on Debian.
    install(DIRECTORY ${PROJECT_BINARY_DIR}/share/man/
        DESTINATION ${CMAKE_INSTALL_MANDIR} COMPONENT tool)
    install(FILES ${PROJECT_SOURCE_DIR}/cli/completions/splice.bash
        DESTINATION ${CMAKE_INSTALL_DATADIR}/bash-completion/completions RENAME splice COMPONENT tool)
    install(FILES ${PROJECT_SOURCE_DIR}/cli/completions/_splice
        DESTINATION ${CMAKE_INSTALL_DATADIR}/zsh/${LIBSPLICE_ZSH_FOLDER} COMPONENT tool)
    install(FILES ${PROJECT_SOURCE_DIR}/cli/completions/splice.fish
        DESTINATION ${CMAKE_INSTALL_DATADIR}/fish/vendor_completions.d COMPONENT tool)
endif()
if(LIBSPLICE_SQLITE)
    install(TARGETS libsplice_sqlite
        LIBRARY DESTINATION ${CMAKE_INSTALL_LIBDIR}/libsplice COMPONENT sqlite)
endif()

# The published values go with the tables: `splice check` holds the one against the other.
install(DIRECTORY ${PROJECT_SOURCE_DIR}/tables ${PROJECT_SOURCE_DIR}/tests/published
    DESTINATION ${CMAKE_INSTALL_DATADIR}/libsplice COMPONENT tables
    FILES_MATCHING PATTERN "*.toml")
install(DIRECTORY ${PROJECT_SOURCE_DIR}/docs/
    DESTINATION ${CMAKE_INSTALL_DOCDIR} COMPONENT docs)
install(DIRECTORY ${PROJECT_BINARY_DIR}/docs/drawings
    DESTINATION ${CMAKE_INSTALL_DOCDIR} COMPONENT docs OPTIONAL)
install(FILES ${PROJECT_SOURCE_DIR}/README.md
    DESTINATION ${CMAKE_INSTALL_DOCDIR} COMPONENT docs)
