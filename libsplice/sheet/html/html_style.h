// How sheets look in a browser and on paper: black on white, large figures, nothing told by hue.
#pragma once

#include <string_view>

namespace libsplice {

inline constexpr std::string_view html_style = R"css(
:root { --ink: #111; --soft: #4a4a4a; --line: #8a8a8a; }
* { box-sizing: border-box; }
html { font: 1.0625rem/1.45 "DejaVu Sans", Verdana, Arial, sans-serif; color: var(--ink);
  background: #fff; }
body { margin: 0; }
svg[aria-hidden] { position: absolute; }
main { max-width: 60rem; margin: 0 auto; padding: 1rem; }
h1 { font-size: 1.5rem; margin: 0.5rem 0 1rem; }
h2 { font-size: 1.35rem; margin: 0 0 0.25rem; overflow-wrap: anywhere; }
h3 { font-size: 1.05rem; margin: 1.25rem 0 0.35rem; overflow-wrap: anywhere; }
p { margin: 0.4rem 0; overflow-wrap: anywhere; }
article { border-top: 3px solid var(--ink); padding: 0.75rem 0 1.5rem; }
.large { font-size: 1.3rem; margin: 0.25rem 0 0.5rem; }
.large strong { font-size: 2.4rem; line-height: 1.15; font-weight: 700; margin-left: 0.4rem; }
dl { margin: 0.5rem 0; }
dl div { display: grid; grid-template-columns: 9.5rem 1fr; gap: 0.75rem; padding: 0.1rem 0; }
dt { color: var(--soft); }
dd { margin: 0; overflow-wrap: anywhere; }
table { border-collapse: collapse; width: 100%; margin: 0.4rem 0; }
th, td { text-align: left; vertical-align: top; padding: 0.2rem 0.75rem 0.2rem 0;
  border-bottom: 1px solid #c4c4c4; overflow-wrap: anywhere; font-weight: 400; }
thead th { color: var(--soft); font-size: 0.875rem; border-bottom: 2px solid var(--line); }
.r { text-align: right; font-variant-numeric: tabular-nums; }
tbody td.r { font-weight: 700; white-space: nowrap; }
.ends td.r { font-size: 14pt; line-height: 1.2; }
.note td { color: var(--soft); font-size: 0.875rem; padding-left: 1rem; }
.steps { list-style-position: outside; padding-left: 2rem; margin: 0.5rem 0; }
.steps li { margin: 0.35rem 0; padding-left: 2.1rem; position: relative; }
.tick { position: absolute; left: 0.1rem; top: 0.1rem; width: 6mm; height: 6mm;
  border: 1.5px solid var(--ink); }
.urgent { border: 2px solid var(--ink); padding: 0.4rem 0.6rem; }
.write-in > span { display: inline-block; margin-right: 1.5rem; }
.write-in .box { display: inline-block; width: 9rem; height: 2.1rem; margin-left: 0.5rem;
  border: 1.5px solid var(--ink); vertical-align: middle; }
.draw { overflow-x: auto; margin: 0.75rem 0; }
.rope { display: block; width: 100%; min-width: 44rem; height: auto; }
.rope text { font: 10.5px "DejaVu Sans", Verdana, Arial, sans-serif; fill: #111; }
.rope .n, .rope .e { font-weight: 700; }
.rope .e { font-size: 13px; }
.rope .m { fill: #111; }
.rope .w { fill: none; stroke: #111; stroke-width: 1.1; }
.rope .b { fill: none; stroke: #555; stroke-width: 1; }
.rope .o, .bearing .o { fill: #fff; stroke: #111; stroke-width: 1.4; }
.bearing .d { fill: #111; stroke: #fff; stroke-width: 1.2; }
figure { margin: 0.25rem 0; max-width: 22rem; }
.ends section { display: flow-root; }
.ends figure { float: right; margin-left: 1.5rem; max-width: 14rem; }
.ends h3 { margin-top: 1.25rem; }
figcaption { color: var(--soft); font-size: 0.875rem; }
.bearing { display: block; width: 14rem; height: auto; }
details { margin: 0.75rem 0; }
summary { cursor: pointer; padding: 0.3rem 0; }
.short { font-size: 0.875rem; color: var(--soft); }
footer { border-top: 3px solid var(--ink); padding-top: 0.5rem; margin-top: 1rem; }
.chart { margin-bottom: 2rem; overflow-x: auto; }
.chart td, .chart tbody th { font-size: 1.1rem; }
.chart tbody th, .chart td:last-child { overflow-wrap: normal; min-width: 8rem; }
.chart td:nth-child(2), .chart td:nth-child(3), .chart thead th { white-space: nowrap; }
.sheet { display: grid; }
.label { display: flex; justify-content: space-between; gap: 2mm; overflow: hidden; padding: 1mm;
  border: 1px dotted #8a8a8a; }
.label div { min-width: 0; }
.label p { margin: 0; font-size: 8.5pt; line-height: 1.2; }
.label .l-name { font-weight: 700; overflow-wrap: anywhere; overflow: hidden; display: -webkit-box;
  -webkit-box-orient: vertical; -webkit-line-clamp: 3; }
.label .l-cut { font-weight: 700; white-space: nowrap; }
.qr { height: 100%; max-width: 45%; flex: none; aspect-ratio: 1; }
/* The marks beside the steps, where there is room. */
@media (min-width: 52rem) { .ends table { float: left; clear: left; width: 47%; }
  .ends section > :not(h3, table, figure) { margin-left: 50%; clear: right; }
  .ends figure { max-width: none; display: flex; gap: 1rem; align-items: center; width: 27rem; } }
main > section > table thead th { overflow-wrap: normal; }
@media (max-width: 34rem) { .ends figure { float: none; margin-left: 0; } dl div { grid-template-columns: 1fr; gap: 0; }
  .large strong { font-size: 2rem; } th, td { padding-right: 0.35rem; font-size: 0.875rem; }
  .ends tbody th, .ends thead th:first-child { white-space: normal; } }
.ends tbody th, .ends thead th:first-child { white-space: nowrap; }
@media (max-width: 27rem) { main { padding: 0.6rem; } .ends td.r { font-size: 0.8rem; } th, td { padding-right: 0.25rem; font-size: 0.8rem; }
  thead th { font-size: 0.75rem; } }
@page { margin: 7mm 9mm 7mm 14mm; }
@media print {
  html { font-size: 10pt; line-height: 1.15; }
  h1 { font-size: 1.4rem; }
  h2 { font-size: 1.25rem; }
  h3 { margin: 0.3rem 0 0.15rem; font-size: 1rem; }
  p, .steps, dl, .draw { margin: 0.25rem 0; }
  dl { columns: 2; column-gap: 6mm; }
  dl div { break-inside: avoid; grid-template-columns: 6.5rem 1fr; }
  th, td { padding: 0.08rem 0.5rem 0.08rem 0; }
  article { zoom: var(--size); }
  .ends td.r { font-size: calc(14pt / var(--size, 1)); line-height: 1; letter-spacing: -0.02em;
    padding: 0.05rem 0.2rem 0.05rem 0.6rem; }
  .ends dl, .ends ~ dl { columns: 1; }
  .ends table { float: left; clear: left; width: 47%; }
  .ends section > :not(h3, table, figure) { margin-left: 50%; clear: right; }
  .ends figure { max-width: none; display: flex; gap: 3mm; align-items: center; width: 80mm; }
  .abreast .ends { display: grid; grid-template-columns: 1fr 1fr; gap: 0 6mm; }
  .abreast .ends table { float: none; width: 100%; }
  .abreast .ends section > :not(h3, table, figure) { margin-left: 0; }
  .abreast .ends figure { width: calc(27mm / var(--size, 1)); display: block; margin-left: 2mm; }
  .abreast figcaption { display: none; }
  .steps li { margin: 0.1rem 0; min-height: calc(6.2mm / var(--size, 1));
    padding-left: calc(7mm / var(--size, 1)); }
  .tick { width: calc(6mm / var(--size, 1)); height: calc(6mm / var(--size, 1)); }
  .rope { width: 82%; margin: 0 auto; }
  article > .write-in { float: right; margin-left: 6mm; }
  .write-in .box { width: calc(24mm / var(--size, 1)); height: calc(7mm / var(--size, 1)); }
  .bearing { width: calc(27mm / var(--size, 1)); flex: none; }
  figure { margin: 0; }
  .chart { break-after: page; }
  .chart.long { zoom: 0.88; }
  .chart.longest { zoom: 0.78; }
  .chart h2 { font-size: 22pt; }
  .chart p, .chart thead th { font-size: 7.5pt; margin: 1mm 0; }
  .chart td, .chart th { font-size: 13pt; padding: 0.7mm 4mm 0.7mm 0; }
  .chart td.r { font-size: 16pt; }
  .chart tbody th { font-size: 15pt; font-weight: 700; }
  .sheet { break-after: page; }
  main:has(.label) h1, main:has(.chart) > h1 { display: none; }
  .label { border-color: transparent; }
  article::after { content: ""; display: block; clear: both; }
  section h2, .short { margin: 0; }
  main { max-width: none; padding: 0; }
  article { break-inside: avoid; padding: 0.3rem 0 0.3rem; }
  .large { margin: 0 0 0 6mm; float: right; }
  .ends, .draw { clear: both; }
  .large strong { font-size: 24pt; }
  .draw { overflow: visible; }
  .rope { min-width: 0; }
  details { display: none; }
  h3, thead { break-after: avoid; }
  main > table + dl { break-before: avoid; }
  tr, li, .urgent, .write-in { break-inside: avoid; }
}
)css";

/// For a sheet of very many pieces: a browser lays out those that are seen.
inline constexpr std::string_view style_of_long_sheet = R"css(<style>
@media screen { article { content-visibility: auto; contain-intrinsic-size: auto 60rem; } }
</style>
)css";

} // namespace libsplice
