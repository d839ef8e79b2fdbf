-- A shop's lines, and how long to cut each.
CREATE TABLE line(name TEXT, rope TEXT, length_m REAL, end_a TEXT, eye_mm REAL, pin_mm REAL);
INSERT INTO line VALUES
    ('outhaul', 'demo-b12-hmpe-3', 2.4, 'buried-eye', 30, 6),
    ('too small an eye', 'demo-b12-hmpe-3', 2.4, 'buried-eye', 4, 6),
    ('lacing', 'demo-b12-hmpe-3', 3.1, NULL, NULL, NULL);

SELECT name,
       splice_cut_m('name', name, 'rope', rope, 'length [m]', length_m, 'fit', 'trim-aboard',
                    'prestretched', 'yes', 'end_a', end_a, 'end_a.eye [mm]', eye_mm,
                    'end_a.pin [mm]', pin_mm) AS cut_m,
       splice_why_not('name', name, 'rope', rope, 'length [m]', length_m, 'fit', 'trim-aboard',
                      'prestretched', 'yes', 'end_a', end_a, 'end_a.eye [mm]', eye_mm,
                      'end_a.pin [mm]', pin_mm) AS why_not
FROM line;

SELECT ledger.item, ledger.end, ledger.length_m, ledger.source
FROM line, splice_ledger('name', name, 'rope', rope, 'length [m]', line.length_m, 'fit', 'trim-aboard',
                         'prestretched', 'yes', 'end_a', end_a, 'end_a.eye [mm]', eye_mm,
                         'end_a.pin [mm]', pin_mm) AS ledger
WHERE line.name = 'outhaul';
