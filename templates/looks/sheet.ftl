<#ftl output_format="CSS">
<#-- A sheet of its own on the binder's paper and grid: the notice, the walk-through, the stay plan. -->
<#include "binder.ftl">
.leaf { page-break-before: auto; }
.band h1 { font-size: 24pt; line-height: 32pt; }
h2 { font-size: 17pt; line-height: 24pt; padding: 16pt 0 8pt; -fs-page-break-min-height: 80pt; }
h3 { font-size: 13pt; line-height: 16pt; padding: 8pt 0 0; -fs-page-break-min-height: 96pt; }
.lead { padding: 8pt 0; }
.points { padding-bottom: 8pt; }
.points li { padding: 0 0 0 24pt; position: relative; page-break-inside: avoid; }
.points li .tick { position: absolute; left: 0; top: 3pt; }
tr { page-break-inside: avoid; }
.day { page-break-inside: avoid; }
.hours th, .hours td { padding: 0 4pt 0 0; line-height: 15pt; height: 15.5pt; }
.hours thead th { font-size: 10pt; line-height: 12pt; }
.hours th { white-space: nowrap; }
.hours thead th { white-space: normal; }
.ended { background-color: #e0e0e0; }
.swaps td { white-space: nowrap; }
.swaps .tick { position: static; display: inline-block; }
.swaps { margin-bottom: 8pt; }
.marked li { list-style: square outside; padding-left: 0; margin-left: 24pt; }
.was-now tbody th { width: 38%; }
[data-part=confirm] { page-break-inside: avoid; }
[data-part=swap] h2, [data-part=figures] h2 { -fs-page-break-min-height: 144pt; }
.hours td { white-space: nowrap; }
.hours td b { font-size: 10pt; }
<#-- the walk-through: where on the left, what to say, show and ask on the right -->
.rain { border: 0.75pt solid #000; padding: 4pt 8pt; margin: 8pt 0; page-break-inside: avoid; }
.stop { float: none; width: auto; page-break-inside: avoid; padding-bottom: 4pt; }
[data-part=walk] h2 { -fs-page-break-min-height: 270pt; }
[data-part=check] h2 { -fs-page-break-min-height: 144pt; }
.leg-head { border-top: 2pt solid #000; background: #e4e4e4; padding: 4pt 6pt; margin: 10pt 0 0; position: relative; page-break-after: avoid; }
.stop-head { border-top: 0.75pt solid #000; padding: 3pt 0; margin: 0; position: relative; -fs-page-break-min-height: 0; }
.stop-n { display: inline-block; width: 28pt; font-size: 17pt; }
.stop-time { position: absolute; right: 0; top: 3pt; font-weight: 400; font-size: 10pt; }
.stop-body { overflow: hidden; }
.stop p + p { font-weight: 400; }
.things { float: left; width: 30%; }
.things p { font-size: 10pt; line-height: 12pt; padding-bottom: 3pt; }
.things .code { font-size: 10pt; }
.telling { float: right; width: 68%; }
.telling p { position: relative; padding: 0 72pt 2pt 40pt; line-height: 14.5pt; }
.telling p > b { position: absolute; left: 0; top: 0; width: 34pt; }
.telling .say, .telling .show { padding-right: 0; }
.initials { display: block; position: absolute; right: 0; bottom: 2pt; width: 64pt; text-align: right; }
.initials .tick { left: 0; top: 2pt; }
.initials .blank { width: 46pt; }
.signed { page-break-inside: avoid; }
