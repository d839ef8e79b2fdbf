// How bench cards look: read at arm's length, black on white on paper, dark on a dark screen.
#pragma once

#include <string_view>

namespace libsplice {

/// Sizes on paper are those that `html_card.cpp` reckons with. Nothing is under 9 pt.
inline constexpr std::string_view card_style = R"css(
main { max-width: 60rem; }
.card { border: 2px solid var(--ink); padding: 0.6rem 0.8rem; margin: 0 0 1.25rem; }
.card header { display: flex; gap: 0.8rem; align-items: flex-start; }
.card .no { flex: none; min-width: 2.6rem; margin: 0; padding: 0.1rem 0.4rem; text-align: center;
  border: 2px solid var(--ink); font-size: 1.5rem; font-weight: 700; }
.card .who { flex: 1; min-width: 0; }
.card h2 { margin: 0; font-size: 1.45rem; line-height: 1.15; }
.card .who p { margin: 0; font-size: 1.1rem; overflow-wrap: anywhere; }
.card .cut { margin: 0; flex: none; text-align: right; font-size: 1.1rem; }
.card .cut strong { display: block; font-size: 2.6rem; line-height: 1; white-space: nowrap; }
.card .why { font-size: 1.1rem; }
.how { display: grid; grid-template-columns: 1fr 1fr; gap: 0.1rem 1.2rem; margin: 0.5rem 0; }
.how div { display: grid; grid-template-columns: 7.6rem 1fr; gap: 0.5rem; align-items: baseline; }
.how dt { color: var(--soft); }
.how dd { margin: 0; overflow-wrap: anywhere; }
.how .pull dd { font-size: 1.4rem; font-weight: 700; line-height: 1.1; }
.caution { border-left: 4px solid var(--ink); padding-left: 0.5rem; margin: 0.3rem 0; }
.more { color: var(--soft); margin: 0.2rem 0; }
.ends { display: grid; grid-template-columns: 1fr 1fr; gap: 0 1.2rem; align-items: start; }
.ends section { min-width: 0; }
.card h3 { margin: 0.4rem 0 0.2rem; font-size: 1.1rem; }
.marks td, .marks th { padding: 0.12rem 0.5rem 0.12rem 0; vertical-align: baseline; }
.marks tbody th { font-weight: 700; }
.marks .n { font-size: 1.2rem; font-weight: 700; }
.marks td.r { white-space: normal; }
.marks .r:last-child { padding-right: 0; }
.between, .go { margin: 0.3rem 0; }
.strips { overflow-x: auto; margin: 0.4rem 0; }
.strip { display: block; flex: none; }
.strip text { font: 3.3px "Liberation Sans", Arial, Helvetica, sans-serif; fill: var(--ink); }
.strip .w { fill: none; stroke: var(--ink); stroke-width: 0.3; }
.strip .t { fill: none; stroke: var(--ink); stroke-width: 0.4; }
.steps { list-style: none; columns: 2; column-gap: 1.4rem; margin: 0.5rem 0; padding: 0; }
.steps li { display: flex; gap: 0.4rem; align-items: baseline; break-inside: avoid;
  padding: 0.1rem 0; }
.steps li > b { flex: none; min-width: 1.9rem; }
.steps li > div { flex: 1; min-width: 0; overflow-wrap: anywhere; }
.steps .tick { position: static; flex: none; align-self: flex-start; margin-top: 0.15rem; }
.steps .at { color: var(--soft); white-space: nowrap; }
.step-figure { float: right; margin: 0 0 0 0.4rem; }
.tick { display: inline-block; width: 4mm; height: 4mm; border: 1.5px solid var(--ink); }
.boxes { table-layout: fixed; }
.boxes th, .boxes td { border: 1px solid var(--ink); padding: 0.15rem 0.4rem; height: 2rem;
  vertical-align: middle; }
.boxes thead th { color: var(--ink); height: auto; vertical-align: bottom; }
.boxes .tick { margin-right: 0.5rem; vertical-align: middle; }
.card footer { border-top: 1px solid var(--line); margin: 0.4rem 0 0; padding: 0.15rem 0 0;
  color: var(--soft); display: flex; justify-content: space-between; gap: 1rem; }
.card footer p { margin: 0; }
.draw { overflow-x: auto; margin: 0.5rem 0; }
.rope { display: block; width: 100%; min-width: 40rem; height: auto; }
.rope text { font: 12.6px "Liberation Sans", Arial, Helvetica, sans-serif; fill: var(--ink); }
.rope .n, .rope .e { font-weight: 700; }
.rope .e { font-size: 14px; }
.rope .m { fill: var(--ink); }
.rope .w { fill: none; stroke: var(--ink); stroke-width: 1.1; }
.rope .b { fill: none; stroke: var(--soft); stroke-width: 1; }
.rope .o, .bearing .o { fill: var(--paper); stroke: var(--ink); stroke-width: 1.4; }
.bearing .d { fill: var(--ink); stroke: var(--paper); stroke-width: 1.2; }
.bearing { display: block; width: 9rem; height: auto; }
.ends figure { margin: 0; }
.office { margin-top: 1.5rem; }
.office table { font-size: 0.95rem; }
@media (max-width: 40rem) {
  .card header { flex-wrap: wrap; }
  .card .cut { width: 100%; text-align: left; order: -1; }
  .card .cut strong { display: inline; font-size: 2.4rem; }
  .how, .ends { grid-template-columns: minmax(0, 1fr); }
  .how div { grid-template-columns: 6.6rem 1fr; }
  .steps { columns: 1; }
  .marks { font-size: 0.9rem; }
  .marks td, .marks th { padding-right: 0.3rem; }
  .boxes th, .boxes td { padding: 0.1rem 0.15rem; font-size: 0.8rem; overflow-wrap: anywhere; }
}
@page { margin: 8mm 10mm; }
@media print {
  html { font-size: 10pt; line-height: 1.2; }
  main { max-width: none; padding: 0; }
  main > h1 { display: none; }
  .card { border: 0; border-bottom: 0.6mm solid var(--ink); padding: 1mm 0; margin: 0 0 1mm;
    break-inside: avoid; }
  .card header { gap: 3mm; }
  .card .no { font-size: 18pt; min-width: 11mm; padding: 0 1mm; }
  .card h2 { font-size: 18pt; line-height: 1.1; }
  .card .who p { font-size: 12pt; line-height: 1.2; }
  .card .cut { font-size: 12pt; }
  .card .cut strong { font-size: 32pt; line-height: 0.95; }
  .how { gap: 0 5mm; margin: 1mm 0; line-height: 1.2; }
  .how div { grid-template-columns: 25mm 1fr; gap: 2mm; }
  .how .pull dd { font-size: 16pt; }
  .caution { margin: 0.8mm 0; }
  .ends { gap: 0 5mm; }
  .card h3 { font-size: 11pt; margin: 1mm 0 0.5mm; }
  .marks { margin: 0; }
  .marks td, .marks th { padding: 0.2mm 2mm 0.2mm 0; font-size: 10pt; line-height: 1.1; }
  .marks thead th { font-size: 9pt; line-height: 1; }
  .marks tbody th, .marks td.r { font-size: 14pt; }
  .marks td.n { font-size: 14pt; font-weight: 700; }
  .marks td.r { font-weight: 400; }
  .between, .go { margin: 0.5mm 0; }
  .steps { font-size: 12pt; line-height: 1.2; column-gap: 5mm; margin: 1mm 0; }
  .steps li { padding: 0.3mm 0; gap: 1.5mm; }
  .steps li > b { min-width: 9mm; }
  .steps .tick { margin-top: 0.6mm; }
  .strips { margin: 1mm 0; overflow: visible; }
  .boxes { margin: 1mm 0; }
  .boxes th, .boxes td { height: 7mm; padding: 0 1.5mm; font-size: 10pt; }
  .boxes thead th { height: auto; font-size: 9pt; line-height: 1.1; }
  .card footer { margin: 0.5mm 0 0; padding: 0; font-size: 9pt; line-height: 1.2; }
  .draw { overflow: visible; margin: 1mm 0; }
  .rope { min-width: 0; }
  .bearing { width: 38mm; }
  .office { break-before: auto; margin-top: 3mm; font-size: 9.5pt; }
  .office table { font-size: 9.5pt; }
  .office tr, .office li, .office p { break-inside: avoid; }
}
)css";

} // namespace libsplice
