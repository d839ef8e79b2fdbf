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
.card .sizes { flex: none; text-align: right; font-size: 1.1rem; }
.card .sizes p { margin: 0; }
.card .cut strong { font-size: 2.6rem; line-height: 1; white-space: nowrap; }
.card .pull strong { font-size: 1.4rem; line-height: 1.1; }
.card .why { font-size: 1.1rem; }
.two { display: grid; grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); gap: 0 1.2rem;
  align-items: start; }
.how { display: grid; grid-template-columns: 6.4rem 1fr; gap: 0.6rem; margin: 0.1rem 0; }
.how dt { color: var(--soft); }
.how dd { margin: 0; overflow-wrap: anywhere; }
.caution { border-left: 4px solid var(--ink); padding-left: 0.5rem; margin: 0.3rem 0; }
.more { color: var(--soft); margin: 0.2rem 0; }
.end { display: grid; grid-template: auto 1fr / 1fr auto; gap: 0 0.6rem; margin-top: 0.4rem; }
.end figure { display: contents; }
.end .bearing { grid-area: 1 / 2 / 3 / 3; }
.end h3 { min-width: 0; }
.card h3 { margin: 0; font-size: 1.1rem; }
.marks { table-layout: fixed; }
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
.steps { list-style: none; margin: 0; padding: 0; }
.steps li { display: flex; gap: 0.4rem; align-items: baseline; margin: 0; padding: 0.1rem 0; }
.steps li > b { flex: none; min-width: 1.9rem; }
.steps li > div { flex: 1; min-width: 0; overflow-wrap: anywhere; }
.steps .tick { position: static; flex: none; align-self: flex-start; margin-top: 0.15rem; }
.steps .at { color: var(--soft); white-space: nowrap; }
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
.bearing { display: block; width: 9rem; height: auto; }
.card figure { margin: 0; }
.office { margin-top: 1.5rem; }
.office table { font-size: 0.95rem; }
.marks th:first-child { width: 2.2rem; }
.marks .r { width: 5.2rem; }
.boxes th:first-child { width: 30%; }
@media (max-width: 40rem) {
  .card header { flex-wrap: wrap; }
  .card .sizes { width: 100%; text-align: left; order: -1; }
  .card .cut strong { font-size: 2.4rem; }
  .two { grid-template-columns: minmax(0, 1fr); }
  .marks { font-size: 0.9rem; }
  .marks .r { width: 4.2rem; }
  .marks td, .marks th { padding-right: 0.3rem; }
  .boxes th, .boxes td { padding: 0.1rem 0.15rem; font-size: 0.8rem; overflow-wrap: anywhere; }
}
@media print {
  main > h1 { display: none; }
  .card { border: 0; border-bottom: 0.6mm solid var(--ink); padding: 1mm 0; margin: 0 0 1mm;
    width: 190mm; break-inside: avoid; }
  .card header { gap: 3mm; margin: 0; }
  .card .no { font-size: 18pt; min-width: 11mm; padding: 0 1mm; line-height: 7.5mm; }
  .card h2 { font-size: 18pt; line-height: 1.1; }
  .card .who p { font-size: 12pt; line-height: 1.15; }
  .card .sizes { font-size: 12pt; line-height: 1.15; min-width: 66mm; }
  .card .cut { line-height: 10.5mm; }
  .card .cut strong { font-size: 32pt; line-height: 10.5mm; }
  .card .pull { line-height: 6mm; }
  .card .pull strong { font-size: 16pt; line-height: 6mm; }
  .card .who + figure { display: block; width: 45mm; }
  .card p { line-height: 1.15; }
  .two { grid-template-columns: 92mm 92mm; justify-content: space-between; gap: 0;
    margin: 0 0 1.5mm; }
  .how { grid-template-columns: 21mm 1fr; gap: 2mm; margin: 0; padding-bottom: 0.3mm;
    line-height: 1.15; }
  .caution, .go, .between, .more { margin: 0; padding-top: 0.5mm; padding-bottom: 0.5mm; }
  .caution { padding-left: 2mm; border-left-width: 1mm; }
  .end { gap: 0 2mm; margin-top: 0; line-height: 1.2; }
  .end .bearing { width: 28mm; }
  .card figcaption { line-height: 1.1; }
  section:has(> .end) { padding-bottom: 1.5mm; }
  .card h3 { font-size: 11pt; line-height: 1.2; }
  .marks { margin: 0; line-height: 1.15; }
  .marks td, .marks th { padding: 0.1mm 1.5mm 0.1mm 0; font-size: 10pt; }
  .marks th:first-child { width: 7mm; }
  .marks .r { width: 21mm; padding: 0.1mm 0 0.1mm 1.5mm; }
  .marks .gap { width: 17mm; }
  .marks thead th { font-size: 9pt; line-height: 1.1; }
  .marks tbody th, .marks tbody td.r { font-size: 14pt; line-height: 5mm; }
  .marks td.n { font-weight: 700; }
  .marks td.r { font-weight: 400; }
  .steps { font-size: 12pt; line-height: 1.15; }
  .steps li { padding: 0.3mm 0; gap: 1.2mm; }
  .steps li > b { min-width: 7.4mm; }
  .steps .tick { width: 3.9mm; height: 3.9mm; margin-top: 0.5mm; }
  .strips { margin: 0 0 1.5mm; overflow: visible; }
  .boxes { margin: 0 0 1.5mm; }
  .boxes th:first-child { width: 27mm; }
  .boxes th, .boxes td { height: 7mm; padding: 0 0.6mm; font-size: 10pt; line-height: 1.15; }
  .boxes thead th { height: auto; font-size: 9pt; line-height: 1.1; }
  .boxes .tick { margin-right: 1mm; }
  .card footer { margin: 0; padding: 0; font-size: 9pt; line-height: 1.15; }
  .draw { overflow: visible; margin: 0 0 1.5mm; }
  .rope { min-width: 0; }
  .office { margin-top: 3mm; font-size: 9pt; line-height: 1.15; columns: 2; column-gap: 6mm; }
  .office h2, .office table { column-span: all; font-size: 9pt; }
  .office h2 { font-size: 16pt; }
  .office h3 { font-size: 9pt; margin: 1mm 0 0; }
  .office dl { margin: 0; }
  .office dl div { grid-template-columns: 23mm 1fr; gap: 1mm; padding: 0; }
  .office tr, .office li, .office p { break-inside: avoid; }
}
)css";

} // namespace libsplice
