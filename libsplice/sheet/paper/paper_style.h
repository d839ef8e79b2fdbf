// How a wall chart and labels look: large, on paper first.
#pragma once

#include <string_view>

namespace libsplice {

inline constexpr std::string_view paper_style = R"css(
main { max-width: none; }
.chart { margin-bottom: 2rem; }
.chart th, .chart td { padding: 0.25rem 0.8rem 0.25rem 0; }
.chart tbody th { font-weight: 700; }
.chart td { font-weight: 400; }
.chart tbody td.r { font-weight: 400; }
.chart tbody td.c-cut, .chart tbody td.c-thick { font-weight: 700; }
.sheet { display: grid; }
.label { display: flex; flex-direction: column; overflow: hidden; padding: 2mm 3mm;
  border: 0.3mm solid var(--line); line-height: 1.15; }
.label p { margin: 0; font-size: 9pt; overflow: hidden; }
.label .l-top { display: flex; justify-content: space-between; gap: 2mm; }
.label .l-name { font-weight: 700; font-size: 12pt; overflow-wrap: anywhere; max-height: 2.4em; }
.label .l-big { display: flex; justify-content: space-between; gap: 3mm; align-items: baseline;
  font-weight: 700; white-space: nowrap; }
.label .l-bottom { display: flex; justify-content: space-between; gap: 2mm; flex: 1; min-height: 0; }
.label .l-bottom div { min-width: 0; }
.label .l-no { white-space: nowrap; }
.qr { flex: none; align-self: flex-end; width: 15mm; height: 15mm; background: #fff; }
.qr path { fill: #000; }
@media (max-width: 40rem) {
  .chart thead { display: none; }
  .chart table, .chart tbody, .chart tr { display: block; }
  .chart tr { display: grid; grid-template-columns: 1fr auto auto; gap: 0 0.8rem;
    border-bottom: 1px solid var(--line); padding: 0.3rem 0; }
  .chart th, .chart td { border: 0; padding: 0; }
  .chart td.c-cut { grid-row: 1; grid-column: 3; font-size: 1.1rem; }
  .chart td.c-thick { grid-row: 1; grid-column: 2; font-size: 1.1rem; }
  .chart tbody th { grid-row: 1; grid-column: 1; font-size: 1.05rem; }
  .chart td.c-rope, .chart td.c-ends { grid-column: 1 / 3; }
}
@media print {
  .chart + .chart { break-before: page; }
  .chart { margin: 0; }
  .chart h2 { font-size: 24pt; margin: 0; }
  .chart thead th { font-size: 10pt; padding: 0 4mm 0 0; }
  .chart td, .chart th { padding: 1mm 4mm 1mm 0; font-size: 14pt; line-height: 1.1; }
  .chart tbody th, .chart td.c-cut, .chart td.c-thick { font-size: 20pt; }
  .chart td.c-finished, .chart td.c-colour { font-size: 16pt; }
  .chart td.c-ends { font-size: 12pt; }
  .chart td.c-thick { white-space: nowrap; }
  .many td, .many th { padding-top: 0.2mm; padding-bottom: 0.2mm; font-size: 12pt; }
  .many td, .many th { padding-right: 2.5mm; }
  .many td.c-rope, .many td.c-colour { white-space: nowrap; }
  .many td.c-ends { font-size: 11pt; }
  .many h2 { font-size: 20pt; line-height: 1; }
  .many td.c-finished, .many td.c-colour { font-size: 14pt; }
  .some td, .some th { padding-top: 2.2mm; padding-bottom: 2.2mm; }
  .few td, .few th { padding-top: 4.5mm; padding-bottom: 4.5mm; }
  .few tbody th, .few td.c-cut, .few td.c-thick { font-size: 24pt; }
  .sheet { break-after: page; }
  main:has(.label) h1, main:has(.chart) > h1 { display: none; }
}
)css";

} // namespace libsplice
