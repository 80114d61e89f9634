<#ftl output_format="CSS">
<#-- Sheets of labels: each label stands where the label sheet has it. Type sizes follow the distance from which a label is read. -->
<#assign family = "Words">
@page { size: ${paper.widthMm}mm ${paper.heightMm}mm; margin: 0; font-family: ${family}; }
body { margin: 0; font-family: ${family}; color: #000; }
p, h1 { margin: 0; padding: 0; }
b { font-weight: 700; }
.label-page { position: relative; width: ${paper.widthMm}mm; height: ${paper.heightMm - 1}mm; page-break-before: always; page-break-inside: avoid; }
.label-page:first-child { page-break-before: auto; }
.label-head { position: absolute; top: 4mm; left: 12mm; font-size: 10pt; line-height: 14pt; font-weight: 400; }
.label { position: absolute; }
.label-side { position: absolute; left: 2mm; top: 2mm; }
.label-code { line-height: 24pt; font-weight: 700; }
.code { border: 1pt solid #000; border-radius: 3pt; padding: 0 2pt; white-space: nowrap; }
.label-edition { font-size: 10pt; line-height: 14pt; padding-top: 2pt; }
.label-word, .label-name { font-weight: 700; }
.blank { display: inline-block; width: 40pt; height: 8pt; border-bottom: 0.75pt solid #000; }
<#list [10, 12, 14, 16] as size>
.points-${size} p { font-size: ${size}pt; line-height: ${size * 1.2}pt; }
.points-${size} .label-word { font-size: ${size * 1.5}pt; line-height: ${size * 1.8}pt; }
</#list>
