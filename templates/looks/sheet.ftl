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
