<#ftl output_format="CSS">
<#-- A sheet of its own on the binder's paper and grid: the notice, the walk-through, the stay plan. -->
<#include "binder.ftl">
.leaf { page-break-before: auto; }
.band h1 { font-size: 24pt; line-height: 32pt; }
h2 { font-size: 17pt; line-height: 24pt; padding: 16pt 0 8pt; -fs-page-break-min-height: 80pt; }
h3 { font-size: 13pt; line-height: 16pt; padding: 8pt 0 0; -fs-page-break-min-height: 64pt; }
.lead { padding: 8pt 0; }
.points { padding-bottom: 8pt; }
.points li { padding: 0 0 0 24pt; position: relative; page-break-inside: avoid; }
.points li .tick { position: absolute; left: 0; top: 3pt; }
tr { page-break-inside: avoid; }
