/** The look of the paper: warm off-white, graphite, thin rules, generous margins, numbers that line up. */

import { colours } from './colours.ts';

export const stylesheet = `
:root { color-scheme: light; }
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; }
body { margin: 0; background: ${colours.paper}; color: ${colours.ink};
  font: 400 1.0625rem/1.55 'Source Sans 3', 'Source Sans Pro', sans-serif; font-kerning: normal; }
main, header, footer { width: 100%; max-width: 45.5rem; margin: 0 auto; padding: 0 1.5rem; }
header { padding-top: 3.5rem; }
h1 { font-size: 2rem; line-height: 1.2; font-weight: 600; margin: 0 0 .4rem; overflow-wrap: anywhere; }
h2 { font-size: 1.375rem; line-height: 1.3; font-weight: 600; margin: 3.25rem 0 .75rem; padding-top: .75rem;
  border-top: 1px solid ${colours.ink}; }
h3 { font-size: 1.0625rem; font-weight: 600; margin: 2.25rem 0 .35rem; }
h4 { font-size: 1rem; line-height: 1.3; font-weight: 600; margin: 0 0 .4rem; }
h4 i, dt i { font-weight: 400; }
p { margin: 0 0 .85rem; max-width: 40rem; overflow-wrap: break-word; }
ul { margin: 0 0 1rem; padding-left: 1.15rem; max-width: 40rem; }
li { margin-bottom: .3rem; overflow-wrap: break-word; }
.quiet, figcaption, caption, footer, .station small { font-size: .9375rem; color: ${colours.softInk}; }
.invented { margin: 0; max-width: none; padding: .7rem 1.5rem; background: ${colours.ink}; color: ${colours.paper}; text-align: center; font-weight: 600; }
.question { color: ${colours.question}; }
dl { margin: 1.25rem 0 0; }
dl > div { display: grid; grid-template-columns: 11rem 1fr; gap: 0 1.25rem; padding: .7rem 0; border-top: 1px solid ${colours.rule}; }
dt { font-weight: 600; }
dd p { margin: 0 0 .4rem; }
.brief dd p { margin-bottom: .15rem; }
details { margin: .6rem 0; }
summary { cursor: pointer; padding: .7rem 0; font-weight: 600; }
.shares { max-width: 24rem; }
dt i { display: block; font-size: .9375rem; line-height: 1.35; }
dd { margin: 0; }
figure { margin: 1.25rem 0 1.5rem; }
figure svg, .wide svg, .narrow svg { display: block; width: 100%; height: auto; }
figcaption { margin-top: .6rem; max-width: 40rem; line-height: 1.45; }
.narrow { display: none; }
.scroll { overflow-x: auto; margin: 1rem 0 .75rem; }
.scroll:focus-visible { outline: 2px solid ${colours.ink}; outline-offset: 3px; }
table { border-collapse: collapse; width: 100%; font-size: .875rem; line-height: 1.35; font-variant-numeric: tabular-nums lining-nums; }
caption { text-align: left; padding-bottom: .5rem; }
th, td { text-align: left; vertical-align: top; padding: .34rem .55rem .34rem 0; font-weight: 400; }
th:last-child, td:last-child { padding-right: 0; }
thead th { font-weight: 600; vertical-align: bottom; border-bottom: 1px solid ${colours.ink}; }
tbody tr { border-bottom: 1px solid ${colours.rule}; }
tbody tr.total th, tbody tr.total td { font-weight: 600; }
.number { text-align: right; }
td.number { min-width: 2.6rem; }
tr.group th { font-weight: 600; padding-top: .8rem; }
tbody th[scope=row] { min-width: 6rem; }
.notes { font-size: .875rem; line-height: 1.4; }
.slim table { width: auto; }
.slim th, .slim td { padding-right: 1.75rem; }
.slim th { white-space: nowrap; }
td.reason { color: ${colours.question}; white-space: normal; min-width: 15rem; }
.pairs { display: grid; grid-template-columns: 1fr 1fr; gap: 1.1rem 1.25rem; margin: 1rem 0; }
.pairs > * { min-width: 0; margin: 0; }
.pairs svg { display: block; width: 100%; height: auto; }
.station p { margin: 0 0 .2rem; font-weight: 600; line-height: 1.35; }
.station small { font-weight: 400; }
footer { margin-top: 3.5rem; padding-top: 1rem; padding-bottom: 4rem; }
footer p { overflow-wrap: anywhere; }
@media (max-width: 600px) {
  main, header, footer { padding-left: 1rem; padding-right: 1rem; }
  header { padding-top: 2rem; }
  h1 { font-size: 1.625rem; }
  .wide { display: none; }
  .narrow { display: block; }
  .pairs { grid-template-columns: 1fr; }
  dl > div { grid-template-columns: 1fr; }
  dt i { display: inline; }
  td.reason { min-width: 12rem; }
  td:not(.number) { min-width: 7rem; }
  td.number { white-space: nowrap; }
}
@page { size: A4; margin: 15mm 16mm 18mm;
  @bottom-left { font: 400 8pt 'Source Sans 3', sans-serif; color: ${colours.softInk}; vertical-align: top; padding-top: 4mm; white-space: nowrap; }
  @bottom-right { content: counter(page) ' / ' counter(pages); font: 400 8pt 'Source Sans 3', sans-serif; color: ${colours.softInk}; vertical-align: top; padding-top: 4mm; } }
@media print {
  html { font-size: 10pt; }
  body { background: none; font-size: 1rem; line-height: 1.45; }
  .paper { fill: #fff; }
  .paper-line { stroke: #fff; }
  main, header, footer { max-width: none; padding: 0; }
  header { padding-top: .6rem; }
  footer { margin-top: 1.2rem; padding-bottom: 0; }
  .invented { background: none; color: ${colours.ink}; border: 1.5pt solid ${colours.ink}; }
  .wide { display: block; }
  .narrow { display: none; }
  .pairs { grid-template-columns: 1fr 1fr; }
  h2, h3, h4, caption, thead, thead tr, tr.group { break-after: avoid; }
  h2 { margin-top: 1.4rem; padding-top: .5rem; }
  h3 { margin-top: 1rem; }
  p, ul, figcaption { max-width: none; }
  p { margin-bottom: .6rem; }
  figure, .station, .whole, tr, tbody.group, dl > div, li { break-inside: avoid; }
  dl > div { grid-template-columns: 10rem 1fr; padding: .4rem 0; line-height: 1.35; }
  .brief { font-size: .9375rem; margin-top: .6rem; }
  dl.brief > div { padding: .25rem 0; line-height: 1.3; }
  .brief dd p { margin-bottom: .05rem; }
  .pairs { gap: .5rem 1.1rem; margin: .5rem 0; }
  .wide svg { width: 94%; }
  figure { margin: .6rem 0 .8rem; }
  figcaption, .quiet, .notes { font-size: .875rem; line-height: 1.35; }
  .notes li { margin-bottom: .1rem; }
  thead { display: table-header-group; }
  details::details-content { content-visibility: visible; display: block; block-size: auto; }
  details { break-inside: avoid; margin: .3rem 0; }
  summary { list-style: none; padding: .3rem 0; break-after: avoid; }
  details li { break-inside: auto; font-size: .875rem; line-height: 1.3; }
  p:has(+ .pairs), p:has(+ figure), p:has(+ .scroll) { break-after: avoid; break-inside: avoid; }
  p, li { orphans: 3; widows: 3; }
  #where .wide svg { width: 76%; }
  .scroll { overflow: visible; }
  .scroll { margin: .6rem 0 .5rem; }
  table { font-size: 8.4pt; line-height: 1.25; }
  th, td { padding: .18rem .5rem .18rem 0; }
  td.number { white-space: nowrap; }
  tr.group th { padding-top: .4rem; }
  tbody th[scope=row] { white-space: nowrap; }
}
`;
