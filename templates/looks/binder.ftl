<#ftl output_format="CSS">
<#-- The binder on paper. One line is 16 points (20 on emergency pages); heights are whole or half lines, so that text stands on one grid.
     Sizes: 24 17 13 12 10, key figures 20, signal words and emergencies 14. No length of a paper is written here: all come from paper. -->
<#assign mm = 72 / 25.4>
<#assign family = "Words">
<#assign text = paper.textWidthMm * mm>
<#assign tabWidth = 11>
<#assign tabHeight = [paper.textHeightMm / [tabs, 1]?max, 24]?min>
<#assign gutter = 48>
<#assign see = (text * 0.34)?round>
<#assign doing = (text - gutter - see - 16)?floor>
<#assign signal = 104>
@page {
  size: ${paper.widthMm}mm ${paper.heightMm}mm;
  margin: ${paper.topMm}mm ${paper.outerMm}mm ${paper.bottomMm}mm ${paper.innerMm}mm;
  font-family: ${family};
}
@page :right {
  @top-center { content: element(head-right); width: 100%; vertical-align: bottom; padding-bottom: 12pt; font-family: ${family}; }
  @bottom-center { content: element(foot-right); width: 100%; vertical-align: top; padding-top: 12pt; font-family: ${family}; }
  @right-middle { content: element(tab-right); vertical-align: top; font-family: ${family}; }
}
@page :left {
  margin: ${paper.topMm}mm ${paper.innerMm}mm ${paper.bottomMm}mm ${paper.outerMm}mm;
  @top-center { content: element(head-left); width: 100%; vertical-align: bottom; padding-bottom: 12pt; font-family: ${family}; }
  @bottom-center { content: element(foot-left); width: 100%; vertical-align: top; padding-top: 12pt; font-family: ${family}; }
  @left-middle { content: element(tab-left); vertical-align: top; font-family: ${family}; }
}
@page cover {
  @top-center { content: none; }
  @bottom-center { content: none; }
  @right-middle { content: none; }
}

body { margin: 0; font-family: ${family}; font-size: 12pt; line-height: 16pt; color: #000; }
p, ul, ol, li, h1, h2, h3, table, th, td { margin: 0; padding: 0; font-size: 12pt; line-height: 16pt; }
ul, ol { list-style: none; }
b, h1, h2, h3 { font-weight: 700; }
h3, .action, .hazard, .threat, .what, .group-title, .place-name { letter-spacing: -0.15pt; }
a { color: #000; text-decoration: none; }
svg { display: inline-block; }
h3 { font-size: 17pt; line-height: 24pt; padding: 8pt 0; -fs-page-break-min-height: 112pt; }
.procedure h3 { -fs-page-break-min-height: 256pt; }
.figure, .page { white-space: nowrap; }
.long, .value .figure { white-space: normal; }
.whole { page-break-inside: avoid; }
.blank { display: inline-block; width: 96pt; height: 12pt; border-bottom: 0.75pt solid #000; }
.code { font-weight: 700; padding: 0 3pt; border: 1pt solid #000; border-radius: 3pt; white-space: nowrap; }
.small { font-size: 10pt; padding-top: 8pt; }

/* furniture: outside the topic and its digest */
.leaf { page-break-before: right; -fs-page-sequence: start; }
.cover-leaf { page-break-before: auto; }
.head, .foot { font-size: 10pt; line-height: 16pt; width: ${text}pt; overflow: hidden; }
.head-right { position: running(head-right); }
.head-left { position: running(head-left); }
.foot-right { position: running(foot-right); }
.foot-left { position: running(foot-left); }
.rig, .section, .edition, .folio { display: block; width: 40%; }
.head-right .rig, .foot-right .edition, .head-left .section, .foot-left .folio { float: left; text-align: left; }
.head-right .section, .foot-right .folio, .head-left .rig, .foot-left .edition { float: right; text-align: right; }
.head-left .draft { float: right; }
.folio { font-size: 12pt; font-weight: 700; }
.pages:after { content: counter(page) " of " counter(pages); }
.draft { display: block; float: left; width: 18%; text-align: center; font-weight: 700; }
.tab { width: ${paper.outerMm}mm; height: ${paper.textHeightMm}mm; }
.tab-right { position: running(tab-right); }
.tab-left { position: running(tab-left); }
.tab div { width: ${tabWidth}mm; background-color: #000; color: #fff; }
.tab-right div { margin-left: ${paper.outerMm - tabWidth}mm; }
.tab span { display: block; height: ${tabHeight - 1}mm; line-height: ${tabHeight - 1}mm; font-size: 17pt; font-weight: 700; text-align: center; }
<#list 0..<tabs as i>.tab-${i} div { position: relative; top: ${i * tabHeight}mm; }
</#list>
.tab.black div { height: ${paper.textHeightMm}mm; top: 0; }

/* a topic opens with one dark band, and under it what one needs to know before starting */
.band { background-color: #000; color: #fff; padding: 8pt 12pt; margin-bottom: 16pt; }
.band h2 { font-size: 24pt; line-height: 32pt; letter-spacing: -0.4pt; }
.topic-code { display: inline-block; width: 72pt; white-space: nowrap; }
.brief { background-color: #ebebeb; padding: 8pt 12pt; margin-bottom: 16pt; overflow: hidden; page-break-inside: avoid; }
.band + .brief { margin-top: -16pt; }
.key { font-size: 10pt; font-weight: 400; color: #333; }
.need { float: left; width: 38%; }
.time { float: left; width: 26%; }
.stop { float: right; width: 34%; }
.mode { font-size: 10pt; }
.stop p + p { font-weight: 700; }

/* steps: what to do, what to see */
.group { padding-bottom: 8pt; }
.group-head { overflow: hidden; border-bottom: 0.75pt solid #000; padding-bottom: 3.25pt; margin-bottom: 4pt; -fs-page-break-min-height: 112pt; }
.warned-1 { -fs-page-break-min-height: 168pt; }
.warned-2 { -fs-page-break-min-height: 224pt; }
.group-title { font-size: 13pt; font-weight: 700; display: block; float: left; width: ${gutter + doing}pt; }
.see-head { font-size: 10pt; color: #333; display: block; float: right; width: ${see}pt; }
.step { page-break-inside: avoid; padding-bottom: 4pt; }
.tail { page-break-inside: avoid; }
.tail .steps { padding-bottom: 8pt; }
.continues { padding-bottom: 0; }
.do { position: relative; padding: 4pt 0 0 ${gutter}pt; overflow: hidden; }
.n { display: block; position: absolute; left: 0; top: 1.2pt; width: 22pt; text-align: right; font-size: 20pt; font-weight: 700; }
.tick { display: block; position: absolute; left: 29pt; top: 6.5pt; width: 10pt; height: 10pt; border: 1pt solid #000; }
.doing { float: left; width: ${doing}pt; }
.seeing { float: right; width: ${see}pt; }
.action { font-weight: 700; }
.see { color: #333; }
.done { font-weight: 700; border-top: 1.5pt solid #000; padding-top: 6.5pt; margin-bottom: 16pt; }

/* signal panels: colour, and a border that differs by level where there is no colour */
.panel { position: relative; page-break-inside: avoid; margin-bottom: 8pt; padding-left: ${signal}pt; }
.step .reminder { margin: 4pt 0; }
.told { background-color: #fff; padding: 5pt 8pt; }
.level-caution .told { padding: 6.5pt 8pt; }
.level-notice .told { padding: 7.25pt 8pt; }
.signal-cell { position: absolute; left: 8pt; top: 4.3pt; width: ${signal - 8}pt; }
.level-caution .signal-cell { top: 5.8pt; }
.level-notice .signal-cell { top: 6.5pt; }
.signal b { font-size: 14pt; }
.triangle { vertical-align: -2pt; }
.level-danger { background-color: #c8102e; border: 3pt solid #000; }
.level-danger .signal { color: #fff; }
.level-warning { background-color: #ff8200; border: 3pt double #000; }
.level-caution { background-color: #ffd100; border: 1.5pt dashed #000; }
.level-notice { background-color: #0072ce; border: 0.75pt solid #000; }
.level-notice .signal { color: #fff; }
.hazard, .threat { font-weight: 700; }
.page { display: inline-block; font-weight: 700; }
a.page:after { content: "\00a0·\00a0" target-counter(attr(href), page); }

/* blocks */
.block { padding-bottom: 8pt; }
.band + .block h3 { padding-top: 0; }
.key-figures li { overflow: hidden; border-top: 0.5pt solid #000; padding: 4pt 0 3.5pt; page-break-inside: avoid; }
.value { float: left; width: 136pt; font-size: 20pt; font-weight: 700; line-height: 24pt; }
.about { margin-left: 144pt; }
.what { font-weight: 700; }
.leans { font-size: 10pt; }
table { width: 100%; border-collapse: separate; border-spacing: 0; -fs-table-paginate: paginate; }
th, td { text-align: left; vertical-align: top; padding: 4pt 8pt 3.5pt 0; border-bottom: 0.5pt solid #000; }
main { display: block; }
thead th, thead td { font-size: 10pt; border-bottom: 1.5pt solid #000; padding-bottom: 2.5pt; }
.short { white-space: nowrap; }
tr { page-break-inside: avoid; }
.of-2 tbody th { width: 36%; }
.of-5 tbody th, .of-6 tbody th, .of-7 tbody th { white-space: nowrap; }
.tasks, .record { table-layout: fixed; }
.tasks th, .tasks td { font-size: 10pt; line-height: 12pt; font-weight: 400; }
.tasks p { font-size: 10pt; line-height: 12pt; }
.tasks .action { font-size: 12pt; line-height: 16pt; font-weight: 700; }
.tasks .see { color: #000; }
.tasks thead th, .record thead th { font-weight: 700; }
.ticks { width: 24pt; }
.tasks .tick { position: relative; left: 0; top: 1pt; }
.spot { width: 104pt; }
.tasks .date { width: 60pt; }
.tasks .blank { width: 56pt; }
.tasks .figure { white-space: normal; }
.tasks .panel { padding-left: 0; margin: 0 0 4pt; }
.tasks .panel + .panel { margin-top: -4pt; }
.tasks .signal-cell { position: static; width: auto; padding: 1pt 6pt; }
.tasks .told { padding: 3pt 6pt; }
.record tbody th { font-weight: 400; }
.record .date { width: 60pt; }
.record .by { width: 44pt; }
.record th, .record td { height: 20pt; }
.fill { page-break-inside: avoid; }
.to-fill { height: 32pt; line-height: 40pt; overflow: hidden; }
.fill-label { display: block; float: left; width: 184pt; }
.fill-line { display: block; float: right; width: ${(text - 192)?floor}pt; height: 26.5pt; border-bottom: 0.75pt solid #000; }
.finding { position: relative; padding: 4pt 0 4pt 24pt; border-bottom: 0.5pt solid #000; }
.finding .tick { left: 2pt; top: 6.5pt; }
.places li { border-top: 0.5pt solid #000; padding: 4pt 0 3.5pt 56pt; position: relative; page-break-inside: avoid; }
.places .code { display: block; position: absolute; left: 0; top: 7pt; font-size: 13pt; line-height: 18pt; }
.place-name { font-size: 17pt; font-weight: 700; line-height: 22pt; }
.place { font-size: 13pt; line-height: 18pt; }
.drawn { page-break-inside: avoid; padding-bottom: 16pt; }
.legends { overflow: hidden; page-break-inside: avoid; }
.legend { float: left; width: 49%; }
.drawing { padding-bottom: 0; }
[data-topic=map] .drawing { page-break-inside: avoid; }
[data-topic=map] h3 { font-size: 13pt; line-height: 16pt; padding: 4pt 0; }
[data-topic=map] .legend { width: ${(text / 2 - 2)?floor}pt; }
[data-topic=map] .legend li { padding: 0 8pt 3pt 36pt; }
[data-topic=map] .drawn { padding-bottom: 8pt; }
.beside { overflow: hidden; page-break-inside: avoid; }
.beside .drawn { float: left; width: 240pt; }
.beside .legends { float: right; width: ${(text - 252)?floor}pt; }
[data-topic=map] .beside .legend { float: none; width: 100%; }
.legend li { position: relative; padding: 0 8pt 4pt 40pt; line-height: 12pt; page-break-inside: avoid; }
.legend .code { display: block; position: absolute; left: 0; top: 0; }
.legend .code { font-size: 10pt; }
.legend p { font-size: 10pt; line-height: 12pt; }

/* photos: the longer side as long as half the text is wide, for which their dots are counted */
<#assign photo = (text / 2 - 4)?floor>
.photo-row { overflow: hidden; page-break-inside: avoid; padding-bottom: 8pt; }
.photo { float: left; width: ${photo}pt; margin-right: 4pt; }
.photo + .photo { float: right; margin-right: 0; }
.photo img { display: block; width: ${[photo, 241]?min}pt; margin-bottom: 4pt; }
.tall img { width: auto; height: ${[photo, 241]?min}pt; }
.photo .legend { float: none; width: 100%; }

/* faults: a symptom and its checks stay on one page; where to stop is white on black */
.fault { page-break-inside: avoid; padding-bottom: 4pt; }
.fault h3 { padding: 4pt 0; }
.band + .fault h3 { padding-top: 0; }
.band + .fault { page-break-inside: auto; }
.fault .told { padding: 2pt 8pt; }
.fault .signal-cell { top: 2pt; }
.fault .panel { margin-bottom: 4pt; }
.fault .reminder + .reminder { margin-top: -4pt; }
.checks { table-layout: fixed; }
.checks th, .checks td { padding: 2.5pt 8pt 2pt 0; line-height: 14pt; }
.checks .at, .checks .means { font-size: 10pt; line-height: 13pt; }
.check-n { width: 16pt; font-weight: 700; }
.check-look { width: 36%; }
.check-place { width: 20%; }
.halt { background-color: #000; color: #fff; padding: 3pt 12pt 3pt 8pt; overflow: hidden; page-break-inside: avoid; }
.halt p { line-height: 14pt; }
.halt a { color: #fff; }
.halt + .halt { border-top: 1pt solid #fff; }
.halt .halt-word { float: left; width: 56pt; font-size: 14pt; line-height: 17pt; }
.halt-sign { margin-left: 60pt; }
.call-line { padding: 2pt 0 4pt; }
.symptoms .group-head { margin-top: 4pt; }
.symptoms li { position: relative; border-bottom: 0.5pt solid #000; padding: 1.5pt 72pt 1pt 0; line-height: 14pt; }
.symptoms .page { position: absolute; right: 0; top: 1.5pt; }

/* emergencies: 14 on 18, on one page; what to tell the caller stands two a row */
.emergency .band { margin-bottom: 8pt; }
.emergency p, .emergency li { font-size: 14pt; line-height: 17pt; }
.emergency .seeing p, .emergency .at { font-size: 12pt; line-height: 14.5pt; }
.emergency .see-head { display: none; }
.emergency .group { padding-bottom: 2pt; }
.emergency .group-head { -fs-page-break-min-height: 40pt; margin-bottom: 2pt; padding-bottom: 1pt; }
.emergency .group-title { font-size: 13pt; line-height: 16pt; width: 100%; }
.emergency .do { padding-top: 1pt; }
.emergency .n { font-size: 20pt; top: 0; }
.emergency .tick { top: 4pt; }
.emergency .step { padding-bottom: 1pt; }
.emergency .tail .steps { padding-bottom: 2pt; }
.emergency .step .reminder { margin: 2pt 0; }
.emergency .doing { width: ${((text - gutter) * 0.47)?floor}pt; }
.emergency .seeing { width: ${((text - gutter) * 0.51)?floor}pt; }
.emergency .panel { margin-bottom: 4pt; }
.emergency .told { padding: 2pt 8pt; }
.emergency .signal-cell { top: 2pt; line-height: 18pt; }
.emergency .done { margin-bottom: 4pt; padding-top: 3pt; }
/* where else one gets out: two rows in the room of one */
.emergency th, .emergency td { padding: 1.5pt 8pt 1pt 0; line-height: 14pt; }
.emergency .fill { padding: 0; page-break-inside: avoid; overflow: hidden; }
.emergency h3 { font-size: 13pt; line-height: 16pt; padding: 4pt 0 0; -fs-page-break-min-height: 64pt; }
.emergency .to-fill { float: left; width: 48%; height: 28pt; line-height: 12pt; }
.emergency .fill-label { float: none; width: 96%; font-size: 10pt; }
.emergency .fill-line { float: none; width: 94%; height: 14pt; }

/* cover */
.cover { page: cover; position: relative; height: ${(paper.textHeightMm * mm)?floor - 1}pt; }
.plate { background-color: #000; color: #fff; padding: 16pt 24pt; height: 112pt; position: relative; }
.portrait { padding-top: 16pt; }
.keeper { font-size: 13pt; }
.plate h1 { font-size: 48pt; line-height: 56pt; }
.kind { font-size: 24pt; line-height: 32pt; }
.reader { font-size: 17pt; line-height: 24pt; padding: 8pt 0; }
.urgent { border: 3pt solid #000; padding: 8pt 12pt; margin-bottom: 16pt; }
.foot-of-cover { position: absolute; bottom: 0; width: ${text}pt; }
.emergency-note { font-weight: 700; padding-bottom: 16pt; }
.contacts li { border-top: 0.5pt solid #000; padding: 4pt 0 3.5pt; overflow: hidden; }
.contacts b, .phone, .when { display: block; float: left; line-height: 24pt; }
.contacts b { width: 208pt; }
.phone { font-size: 20pt; font-weight: 700; width: 136pt; }
.about-page tbody th { width: 120pt; }
.about-page { page-break-before: always; }
.issue { padding-top: 16pt; }

/* contents */
.lead { padding-bottom: 8pt; }
.toc { table-layout: fixed; }
.toc th, .toc td { border-bottom: 0; padding: 0 8pt 0 0; }
.toc thead th { border-bottom: 1.5pt solid #000; padding-bottom: 2.5pt; }
.toc .opens th, .toc .opens td { padding-top: 8pt; }
.toc-tab { width: 40pt; }
.toc-tab span { background-color: #000; color: #fff; font-weight: 700; display: block; width: 24pt; text-align: center; }
.toc-code { width: 48pt; font-weight: 700; }
.toc-edition { width: 56pt; }
.toc-date { width: 96pt; white-space: nowrap; }
.toc tbody th { font-weight: 400; }
.record { page-break-inside: avoid; padding-top: 16pt; }
.record table { table-layout: fixed; }
.record-by { width: 120pt; }

/* change bars, inside the text: the renderer cuts off what hangs into the margin */
[data-changed], tr[data-changed] > :first-child { border-left: 3pt solid #000; }
p[data-changed], tr[data-changed] > :first-child { padding-left: 4pt; }
