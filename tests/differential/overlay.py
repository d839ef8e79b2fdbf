"""A few ropes that the tables do not have: measured, with a core or a braid of their own."""

OVERLAY = {
    "tables.toml": 'version = "differential"\ntitle = "Ropes of the differential test"\n',
    "sources.toml": '[[source]]\nkey = "differential"\ntitle = "Invented for a test"\nterms = "none"\n',
    "ropes/measured.toml": "".join(
        f'[[rope]]\nid = "{name}"\ntitle = "{name}"\nconstruction = "{construction}"\n'
        f'fibre = "{fibre}"\ndiameter = "{size} mm"\n'
        f'source = "differential"\nlocator = "none"\nstatus = "demo"\n'
        f'measured_diameter = {{ value = {measured}, unit = "mm" }}\n'
        'breaking = { value = 17, unit = "kN" }\n'
        'stretch = { value = 1.7, unit = "%", at = "25 %" }\n'
        + (f'braid_constant = {{ value = {braid}, spread = "measured" }}\n' if braid else "")
        + (f'core_diameter = {{ value = {core}, unit = "mm" }}\n' if core else "") + "\n"
        for name, construction, fibre, size, measured, core, braid in (
            ("odd-b12-hmpe-5", "12-strand", "HMPE", 5, 5.4, None, "0.21, sd = 0.012"),
            ("odd-b12-poly-6", "12-strand", "polyester", 6, 5.7, None, "0.19, low = 0.17, high = 0.22"),
            ("odd-cd-hmpe-6", "core-dependent", "HMPE", 6, 6.3, 4.1, "0.1, sd = 0.02"),
            ("odd-db-poly-10", "double-braid", "polyester", 10, 10.6, None, None),
        )),
}
