<#ftl output_format="CSS">
<#-- Cards on paper, each a fixed box. No length is written here that the fitting of the cards must know: all come from size. -->
<#assign mm = 72 / 25.4>
<#assign room = size.roomPt>
@page { size: ${sheet.widthMm}mm ${sheet.heightMm}mm; margin: 0; }
body { margin: 0; font-family: "Words"; font-size: ${size.text}pt; line-height: ${size.line}pt; color: #000; }
main { display: block; }
p, ol, ul, li, h1, h2, h3, dl, dt, dd { margin: 0; padding: 0; font-size: ${size.text}pt; line-height: ${size.line}pt; font-weight: 400; }
ol, ul { list-style: none; }
b { font-weight: 700; }
a { color: #000; text-decoration: none; }
svg { display: inline-block; }
.sheet { position: relative; width: ${sheet.widthMm}mm; height: ${(sheet.heightMm * mm)?floor - 1}pt; page-break-after: always; overflow: hidden; }
.last { page-break-after: auto; }
.card { position: absolute; width: ${room}pt; height: ${size.heightPt}pt; word-wrap: break-word; }
<#list 0..<sheet.count as i>.slot-${i} { left: ${sheet.leftMm + (i % sheet.across) * size.widthMm + size.marginMm}mm; top: ${sheet.topMm + (i / sheet.across)?floor * size.heightMm + size.marginMm}mm; }
</#list>
.card-head { position: relative; border-bottom: 2pt solid #000; padding-bottom: 3pt; }
.scan .card-head { padding-right: ${size.codePt + 3}pt; min-height: ${size.codePt}pt; }
.scan-me { position: absolute; right: 0; top: 0; width: ${size.codePt}pt; height: ${size.codePt}pt; }
.qr { width: ${size.codePt}pt; height: ${size.codePt}pt; }
.card-code, .mode { font-size: ${size.small}pt; line-height: ${size.smallLine}pt; }
.card-title { font-size: ${size.title}pt; line-height: ${size.titleLine}pt; font-weight: 700; letter-spacing: -0.2pt; }
.emergency .card-head { background-color: #000; color: #fff; padding: 0 6pt 3pt; }
.part-title { font-size: ${size.small + 1}pt; line-height: ${size.smallLine + 1}pt; font-weight: 700; border-bottom: 0.75pt solid #000; padding: 3pt 0 1pt; }
.step { position: relative; padding: 2.5pt 0; }
.do { position: relative; padding-left: ${size.gutterPt}pt; }
.n { position: absolute; left: 0; white-space: nowrap; top: 0; width: ${size.gutterPt - 22}pt; text-align: right; font-weight: 700; font-size: ${size.text + 2}pt; }
.tick { display: block; position: absolute; left: ${size.gutterPt - 18}pt; top: ${(size.line - 11) / 2}pt; width: 11.5pt; height: 11.5pt; border: 1pt solid #000; }
.action { font-weight: 700; letter-spacing: -0.15pt; }
.at, .see, .if-not, .note { font-size: ${size.small}pt; line-height: ${size.smallLine}pt; }
.code { font-weight: 700; padding: 0 3pt; border: 0.75pt solid #000; border-radius: 3pt; white-space: nowrap; }
.figure, .page { white-space: nowrap; }
.long { white-space: normal; }
.blank { display: inline-block; width: 64pt; height: ${size.small}pt; border-bottom: 0.75pt solid #000; }
.panel { position: relative; padding-left: ${size.signalPt}pt; margin: 1pt 0 1.5pt; }
.signal-cell { position: absolute; left: 3pt; top: 2pt; font-size: ${size.text}pt; white-space: nowrap; }
.told { background-color: #fff; padding: 0 4pt; }
.command { font-weight: 700; }
.level-danger { background-color: #c8102e; border: 3pt solid #000; }
.level-warning { background-color: #ff8200; border: 3pt double #000; }
.level-caution { background-color: #ffd100; border: 1.5pt dashed #000; }
.level-notice { background-color: #0072ce; border: 0.75pt solid #000; }
.level-caution .told, .level-notice .told { padding: 1pt 4pt; }
.level-danger .signal, .level-notice .signal { color: #fff; font-weight: 700; }
.fact { position: relative; overflow: hidden; border-bottom: 0.5pt solid #000; padding: 2.5pt 0; }
.fact dt { float: left; width: ${size.labelPt - 8}pt; font-size: ${size.small}pt; line-height: ${size.smallLine}pt; }
.fact dd { float: right; width: ${room - size.labelPt}pt; font-weight: 700; }
.write { height: ${size.toWrite}pt; }
.write dt { padding-top: 8pt; }
.write .blank { width: ${(room - size.labelPt - 4)?floor}pt; height: ${size.toWrite - 4}pt; border-bottom: 0; }
.alone { font-size: ${size.small}pt; line-height: ${size.smallLine}pt; }
.card-foot { position: absolute; left: 0; bottom: 0; width: ${room}pt; }
.end { border-top: 1.5pt solid #000; padding: 2pt 0; font-weight: 700; }
.call { font-size: ${size.small}pt; line-height: ${size.smallLine}pt; font-weight: 700; border-top: 0.75pt solid #000; padding-top: 2pt; }
.id { font-size: 10pt; line-height: 12pt; overflow: hidden; }
<#if sheet.folded>
.bound { position: absolute; top: 0; width: ${sheet.widthMm / 2}mm; height: ${(sheet.heightMm * mm)?floor - 1}pt; }
.half-0 { left: 0; }
.half-1 { left: ${sheet.widthMm / 2}mm; }
.folio { position: absolute; left: 0; bottom: 3.5mm; width: ${sheet.widthMm / 2}mm; text-align: center; font-size: 10pt; line-height: 12pt; font-weight: 700; }
.book-rig { font-size: 40pt; line-height: 48pt; font-weight: 700; padding-top: 96pt; }
.book-kind { font-size: 17pt; line-height: 24pt; border-bottom: 4pt solid #000; padding-bottom: 12pt; }
.book-title { font-size: 24pt; line-height: 32pt; font-weight: 700; padding-top: 24pt; }
.book-lead { padding-top: 12pt; }
.book-lines li { position: relative; padding: 0 0 2pt 40pt; }
.book-page { position: absolute; left: 0; width: 28pt; text-align: right; font-weight: 700; }
.urgent { font-weight: 700; }
</#if>
