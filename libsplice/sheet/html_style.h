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
.note td { color: var(--soft); font-size: 0.875rem; padding-left: 1rem; }
.steps { list-style-position: outside; padding-left: 2rem; margin: 0.5rem 0; }
.steps li { margin: 0.35rem 0; padding-left: 2.1rem; position: relative; }
.tick { position: absolute; left: 0.1rem; top: 0.1rem; width: 6mm; height: 6mm;
  border: 1.5px solid var(--ink); }
.urgent { border: 2px solid var(--ink); padding: 0.4rem 0.6rem; }
.write-in .box { display: inline-block; width: 11rem; height: 2.1rem; margin-left: 0.5rem;
  border: 1.5px solid var(--ink); vertical-align: middle; }
.draw { overflow-x: auto; margin: 0.75rem 0; }
.rope { display: block; width: 100%; min-width: 44rem; height: auto; }
.rope text { font: 11px "DejaVu Sans", Verdana, Arial, sans-serif; fill: #111; }
.rope .n, .rope .e { font-weight: 700; }
.rope .e { font-size: 13px; }
.rope .o { fill: #fff; stroke: #111; stroke-width: 1.4; }
.rope .m { fill: #111; }
.rope .b { fill: none; stroke: #555; stroke-width: 1; }
details { margin: 0.75rem 0; }
summary { cursor: pointer; padding: 0.3rem 0; }
.short { font-size: 0.875rem; color: var(--soft); }
footer { border-top: 3px solid var(--ink); padding-top: 0.5rem; margin-top: 1rem; }
@media (min-width: 50rem) { .ends { display: grid; grid-template-columns: 1fr 1fr; gap: 0 2rem; } }
@media (max-width: 34rem) { dl div { grid-template-columns: 1fr; gap: 0; }
  .large strong { font-size: 2rem; } }
@page { margin: 12mm 12mm 14mm 16mm; }
@media print {
  html { font-size: 9.2pt; line-height: 1.3; }
  main { max-width: none; padding: 0; }
  .ends { display: grid; grid-template-columns: 1fr 1fr; gap: 0 6mm; }
  article { break-inside: avoid; padding-bottom: 0.5rem; }
  .large strong { font-size: 25pt; }
  .draw { overflow: visible; }
  .rope { min-width: 0; }
  details:not([open]) { display: none; }
  tr, li, .urgent, .write-in { break-inside: avoid; }
}
)css";

} // namespace libsplice
