<#ftl output_format="CSS">
<#-- The style of the binder on paper. One line is 16 points; heights are whole or half lines, so that text stands on one grid.
     No length of a paper is written here: all come from paper. -->
<#assign mm = 72 / 25.4>
<#assign words = "Words">
<#assign textWidth = paper.textWidthMm * mm>
<#assign tabHeight = (paper.textHeightMm / [tabs, 1]?max)>
<#assign tabHeight = [tabHeight, 24]?min>
<#assign gutter = 48>
<#assign signal = 104>
@page {
  size: ${paper.widthMm}mm ${paper.heightMm}mm;
  margin: ${paper.topMm}mm ${paper.outerMm}mm ${paper.bottomMm}mm ${paper.innerMm}mm;
  font-family: ${words};
}
@page :right {
  @top-center { content: element(head-right); width: 100%; vertical-align: bottom; font-family: ${words}; }
  @bottom-center { content: element(foot-right); width: 100%; vertical-align: top; font-family: ${words}; }
  @right-middle { content: element(tab-right); vertical-align: top; font-family: ${words}; }
}
@page :left {
  margin: ${paper.topMm}mm ${paper.innerMm}mm ${paper.bottomMm}mm ${paper.outerMm}mm;
  @top-center { content: element(head-left); width: 100%; vertical-align: bottom; font-family: ${words}; }
  @bottom-center { content: element(foot-left); width: 100%; vertical-align: top; font-family: ${words}; }
  @left-middle { content: element(tab-left); vertical-align: top; font-family: ${words}; }
}

/* type: 24 17 13 12 10; key figures 20 */
body { margin: 0; font-family: ${words}; font-size: 12pt; line-height: 16pt; color: #000; }
p, ul, ol, li, h1, h2, h3, table, th, td { margin: 0; padding: 0; font-size: 12pt; line-height: 16pt; }
ul, ol { list-style: none; }
b, h1, h2, h3 { font-weight: 700; }
a { color: #000; text-decoration: none; }
svg { display: inline-block; }
h3 { font-size: 17pt; margin: 16pt 0 8pt; line-height: 24pt; page-break-after: avoid; }
.small, .leans, .key { font-size: 10pt; }
.figure { white-space: nowrap; }
.blank { display: inline-block; width: 96pt; height: 13pt; border-bottom: 0.75pt solid #000; }
.code { font-size: 12pt; font-weight: 700; padding: 0 3pt; border: 1pt solid #000; border-radius: 3pt; white-space: nowrap; line-height: 13pt; }

/* furniture: outside the topic, outside its digest */
.leaf { page-break-before: right; -fs-page-sequence: start; }
.head, .foot { font-size: 10pt; line-height: 16pt; width: ${textWidth}pt; }
.head { padding-bottom: 14pt; }
.foot { padding-top: 14pt; }
.head-right { position: running(head-right); }
.head-left { position: running(head-left); }
.foot-right { position: running(foot-right); }
.foot-left { position: running(foot-left); }
.head span, .foot span { display: block; width: 40%; }
.head-right .rig, .foot-right .edition, .head-left .section, .foot-left .number { float: left; text-align: left; }
.head-right .section, .foot-right .number, .head-left .rig, .foot-left .edition { float: right; text-align: right; }
.foot .number { font-size: 12pt; font-weight: 700; }
.foot .pages { display: inline; font-size: 12pt; font-weight: 700; }
.foot .pages::after { content: counter(page) " of " counter(pages); }
.head .draft { position: absolute; left: 40%; width: 20%; text-align: center; font-weight: 700; }
.head .draft b { border: 1pt solid #000; padding: 0 6pt; }
.tab { width: ${paper.outerMm}mm; height: ${paper.textHeightMm}mm; font-weight: 700; }
.tab-right { position: running(tab-right); }
.tab-left { position: running(tab-left); }
.tab span { display: block; width: 11mm; height: ${tabHeight - 1}mm; line-height: ${tabHeight - 1}mm; background-color: #000; color: #fff; font-size: 17pt; text-align: center; }
.tab-right span { margin-left: ${paper.outerMm - 11}mm; }
.tab.black { background-color: #000; }
<#list 0..<tabs as i>.tab-${i} span { position: relative; top: ${i * tabHeight}mm; }
</#list>

/* a topic opens with one dark band */
.band { background-color: #000; color: #fff; padding: 8pt 12pt; margin-bottom: 8pt; }
.band h2 { font-size: 24pt; line-height: 32pt; }
.topic-code { display: inline-block; padding-right: 12pt; }
.brief { padding: 0 0 8pt; border-bottom: 1.5pt solid #000; margin-bottom: 14.5pt; overflow: hidden; }
.key { font-weight: 700; }
.brief .need { float: left; width: 45%; }
.brief .time { float: left; width: 22%; }
.brief .stop { float: right; width: 32%; }
.brief .mode { font-size: 10pt; }
.brief .stop p + p { font-weight: 700; }

/* steps: what to do, what to see */
.group { margin-bottom: 8pt; }
.group-head { overflow: hidden; page-break-after: avoid; border-bottom: 0.75pt solid #000; padding-bottom: 3.25pt; margin-bottom: 4pt; }
.group-title { font-size: 13pt; font-weight: 700; display: block; float: left; width: 60%; }
.see-head { font-size: 10pt; display: block; float: right; width: 34%; }
.step { page-break-inside: avoid; padding-bottom: 8pt; }
.step:first-child { page-break-after: avoid; }
.do { position: relative; padding-left: ${gutter}pt; overflow: hidden; }
.gutter { position: absolute; left: 0; top: 0; width: ${gutter}pt; }
.number { position: absolute; left: 0; top: -2.8pt; width: 22pt; text-align: right; font-size: 20pt; font-weight: 700; line-height: 16pt; }
.tick { position: absolute; left: 29pt; top: 2pt; width: 10pt; height: 10pt; border: 1pt solid #000; }
.left { float: left; width: ${(textWidth * 0.62 - gutter)?round}pt; }
.right { float: right; width: 34%; }
.action { font-weight: 700; }
.see { color: #333; }
.at, .note { font-size: 12pt; }
.done { font-weight: 700; border-top: 1.5pt solid #000; padding-top: 6.5pt; margin-bottom: 16pt; }

/* signal panels: colour, and a border that differs by level where there is no colour */
.panel { position: relative; page-break-inside: avoid; margin-bottom: 8pt; padding-left: ${signal}pt; }
.panel .told { background-color: #fff; padding: 4pt 8pt; }
.panel .signal-cell { position: absolute; left: 8pt; top: 4pt; width: ${signal - 8}pt; font-size: 14pt; }
.panel .signal b { font-size: 14pt; }
.triangle { vertical-align: -1.5pt; }
.danger { background-color: #c8102e; border: 3pt solid #000; }
.danger .signal { color: #fff; }
.danger .sign { fill: #fff; stroke: #fff; }
.danger .mark { fill: #c8102e; }
.warning { background-color: #ff8200; border: 3pt double #000; }
.caution { background-color: #ffd100; border: 1.5pt dashed #000; }
.notice { background-color: #0072ce; border: 0.75pt solid #000; }
.notice .signal { color: #fff; }
.sign { fill: #000; stroke: #000; }
.warning .mark { fill: #ff8200; }
.caution .mark { fill: #ffd100; }
.hazard, .threat { font-weight: 700; }
.avoid li { padding-left: 12pt; }
.page { font-weight: 700; white-space: nowrap; }

/* blocks */
.block { margin-bottom: 16pt; }
.key-figures li { overflow: hidden; border-top: 0.5pt solid #000; padding: 4pt 0 3.5pt; page-break-inside: avoid; }
.key-figures .value { float: left; width: 120pt; font-size: 20pt; font-weight: 700; line-height: 24pt; }
.key-figures .about { margin-left: 128pt; }
.what { font-weight: 700; }
table { width: 100%; border-collapse: collapse; -fs-table-paginate: paginate; }
th, td { text-align: left; vertical-align: top; padding: 4pt 8pt 3.5pt 0; border-bottom: 0.5pt solid #000; }
thead th { font-size: 10pt; border-bottom: 1.5pt solid #000; padding-bottom: 2.5pt; }
tr { page-break-inside: avoid; }
.to-fill { height: 32pt; position: relative; }
.fill-label { position: absolute; left: 0; bottom: 2pt; }
.fill-line { display: block; position: absolute; left: 150pt; right: 0; bottom: 6pt; border-bottom: 0.75pt solid #000; }
.places li { border-top: 0.5pt solid #000; padding: 8pt 0 7.5pt; page-break-inside: avoid; }
.place-name { font-size: 17pt; font-weight: 700; line-height: 24pt; }
.place { font-size: 13pt; }
.drawn { text-align: center; page-break-inside: avoid; }
.legends { overflow: hidden; }
.legend { float: left; width: 50%; }
