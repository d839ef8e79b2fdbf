// How every page looks, in a browser and on paper: ink on paper, nothing said by hue.
#pragma once

#include <string_view>

namespace libsplice {

inline constexpr std::string_view html_style = R"css(
:root { --ink: #111; --paper: #fff; --soft: #4a4a4a; --line: #8a8a8a; color-scheme: light dark; }
@media screen and (prefers-color-scheme: dark) {
  :root { --ink: #ececec; --paper: #161616; --soft: #bdbdbd; --line: #8a8a8a; }
}
* { box-sizing: border-box; }
html { font: 1.0625rem/1.4 "Liberation Sans", Arial, Helvetica, sans-serif; color: var(--ink);
  background: var(--paper); }
body { margin: 0; }
a { color: inherit; }
svg[aria-hidden] { position: absolute; }
main { max-width: 60rem; margin: 0 auto; padding: 1rem; }
h1 { font-size: 1.5rem; margin: 0.5rem 0 1rem; }
h2 { font-size: 1.35rem; margin: 0 0 0.25rem; overflow-wrap: anywhere; }
h3 { font-size: 1.05rem; margin: 1.25rem 0 0.35rem; overflow-wrap: anywhere; }
p { margin: 0.4rem 0; overflow-wrap: anywhere; }
.large { font-size: 1.3rem; margin: 0.25rem 0 0.5rem; }
.large strong { font-size: 2.4rem; line-height: 1.15; font-weight: 700; margin-left: 0.4rem; }
dl { margin: 0.5rem 0; }
dl div { display: grid; grid-template-columns: 9.5rem 1fr; gap: 0.75rem; padding: 0.1rem 0; }
dt { color: var(--soft); }
dd { margin: 0; overflow-wrap: anywhere; }
table { border-collapse: collapse; width: 100%; margin: 0.4rem 0; }
th, td { text-align: left; vertical-align: baseline; padding: 0.2rem 0.75rem 0.2rem 0;
  border-bottom: 1px solid var(--line); overflow-wrap: anywhere; font-weight: 400; }
thead th { color: var(--soft); font-size: 0.875rem; border-bottom: 2px solid var(--line);
  vertical-align: bottom; overflow-wrap: normal; }
.r { text-align: right; font-variant-numeric: tabular-nums; }
tbody td.r { font-weight: 700; white-space: nowrap; }
.note td { color: var(--soft); font-size: 0.875rem; padding-left: 1rem; }
.steps { list-style-position: outside; padding-left: 2rem; margin: 0.5rem 0; }
.steps li { margin: 0.35rem 0; padding-left: 2.1rem; position: relative; }
.tick { position: absolute; left: 0.1rem; top: 0.1rem; width: 5mm; height: 5mm;
  border: 1.5px solid var(--ink); }
.urgent { border: 2px solid var(--ink); padding: 0.4rem 0.6rem; }
.write-in > span { display: inline-block; margin-right: 1.5rem; }
.write-in .box { display: inline-block; width: 9rem; height: 2.1rem; margin-left: 0.5rem;
  border: 1.5px solid var(--ink); vertical-align: middle; }
.draw { overflow-x: auto; margin: 0.75rem 0; }
.rope { display: block; width: 100%; min-width: 44rem; height: auto; }
.rope text { font: 12.6px "Liberation Sans", Arial, Helvetica, sans-serif; fill: var(--ink); }
.rope .n, .rope .e { font-weight: 700; }
.rope .e { font-size: 14px; }
.rope .m { fill: var(--ink); }
.rope .w { fill: none; stroke: var(--ink); stroke-width: 1.1; }
.rope .b { fill: none; stroke: var(--soft); stroke-width: 1; }
.rope .o, .bearing .o { fill: var(--paper); stroke: var(--ink); stroke-width: 1.4; }
.bearing .d { fill: var(--ink); stroke: var(--paper); stroke-width: 1.2; }
figure { margin: 0.25rem 0; max-width: 22rem; }
figcaption { color: var(--soft); font-size: 0.875rem; }
.bearing { display: block; width: 14rem; height: auto; }
details { margin: 0.75rem 0; }
summary { cursor: pointer; padding: 0.3rem 0; }
.short { font-size: 0.875rem; color: var(--soft); }
main > footer { border-top: 3px solid var(--ink); padding-top: 0.5rem; margin-top: 1rem; }
@media (max-width: 34rem) { dl div { grid-template-columns: 1fr; gap: 0; }
  .large strong { font-size: 2rem; } th, td { padding-right: 0.35rem; font-size: 0.875rem; } }
@media (max-width: 27rem) { main { padding: 0.6rem; }
  th, td { padding-right: 0.25rem; font-size: 0.8rem; } thead th { font-size: 0.75rem; } }
@page { margin: 8mm 10mm; }
@media print {
  :root { --ink: #000; --paper: #fff; --soft: #333; --line: #777; color-scheme: light; }
  html { font-size: 10pt; line-height: 1.2; }
  main { max-width: none; padding: 0; }
  h1 { font-size: 16pt; }
  h3 { margin: 2mm 0 0.5mm; font-size: 11pt; }
  p, .steps, dl, .draw { margin: 0.6mm 0; }
  dl div { break-inside: avoid; grid-template-columns: 30mm 1fr; }
  th, td { padding: 0.2mm 3mm 0.2mm 0; }
  thead th, .note td, figcaption, .short { font-size: 9pt; }
  .rope { min-width: 0; }
  details { display: none; }
  h3, thead { break-after: avoid; }
  tr, li, .urgent, .write-in { break-inside: avoid; }
}
)css";

/// For a sheet of very many cards: a browser lays out those that are seen.
inline constexpr std::string_view style_of_long_sheet = R"css(
@media screen { .card { content-visibility: auto; contain-intrinsic-size: auto 60rem; } }
)css";

} // namespace libsplice
