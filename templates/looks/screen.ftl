/* The edition for a screen: one column, works at 400 px and at twice the size, prints from a browser. No length of a paper stands here. */
* { box-sizing: border-box; }
main { display: block; }
body { margin: 0 auto; padding: 0 16px 48px; max-width: 46em; font: 17px/1.45 "DejaVu Sans", Verdana, sans-serif; color: #000; background: #fff; overflow-wrap: break-word; }
ul, ol { list-style: none; margin: 0; padding: 0; }
p { margin: 0; }
h1 { font-size: 2.2em; line-height: 1.2; margin: 24px 0 0; }
h2 { font-size: 1.4em; line-height: 1.25; margin: 0; }
h3 { font-size: 1.15em; margin: 28px 0 8px; }
a { color: #000; text-decoration: underline; }
svg { max-width: 100%; height: auto; }
.furniture, .gutter .tick { display: none; }
.leaf { border-top: 3px solid #000; margin-top: 40px; }
.cover-leaf { border-top: 0; margin-top: 0; }
.plate { background: #000; color: #fff; padding: 24px; }
.reader { font-size: 1.15em; margin: 16px 0; }
.band { background: #000; color: #fff; padding: 10px 14px; margin-bottom: 16px; }
.topic-code { margin-right: 14px; }
.brief { background: #ebebeb; padding: 8px 14px; margin: -16px 0 16px; }
.brief > div { margin: 4px 0; }
.key, .see-head { color: #333; }
.group-head { font-weight: 700; border-bottom: 1px solid #000; margin: 20px 0 4px; }
.see-head { display: none; }
.step { padding: 8px 0; border-bottom: 1px solid #999; }
.do { display: grid; grid-template-columns: 2.4em 1fr; }
.n { font-size: 1.4em; font-weight: 700; line-height: 1; }
.seeing { grid-column: 2; }
.action, .done { font-weight: 700; }
.done { border-top: 2px solid #000; padding-top: 8px; margin-top: 8px; }
.see { color: #333; }
.code { font-weight: 700; padding: 0 4px; border: 1px solid #000; border-radius: 4px; white-space: nowrap; }
.panel { display: grid; grid-template-columns: 8em 1fr; margin: 8px 0; border: 1px solid #000; }
.signal-cell { padding: 6px 8px; font-size: 1.1em; }
.told { background: #fff; padding: 6px 10px; }
.level-danger { background: #c8102e; border: 4px solid #000; }
.level-warning { background: #ff8200; border: 4px double #000; }
.level-caution { background: #ffd100; border: 2px dashed #000; }
.level-notice { background: #0072ce; }
.level-danger .signal, .level-notice .signal { color: #fff; font-weight: 700; }
.hazard, .threat { font-weight: 700; }
.value { font-size: 1.5em; font-weight: 700; }
.key-figures li, .places li, .finding, .legend li { border-top: 1px solid #999; padding: 8px 0; }
.beside { display: flex; flex-wrap: wrap; gap: 0 24px; }
.beside h3 { width: 100%; }
.beside .drawn { flex: 0 1 340px; }
.beside .legends { flex: 1 1 260px; }
.urgent { border: 4px solid #000; padding: 8px 14px; margin: 16px 0; }
.photo img { max-width: 100%; height: auto; }
.tall img { max-height: 90vh; width: auto; }
.what, .place-name { font-weight: 700; }
.leans, .small { font-size: 0.85em; }
.wide { overflow-x: auto; }
table { border-collapse: collapse; width: 100%; margin: 8px 0 16px; }
th, td { text-align: left; vertical-align: top; padding: 5px 10px 5px 0; border-bottom: 1px solid #999; }
.toc td, .toc thead th { white-space: nowrap; }
.toc-date { display: none; }
thead th, thead td { border-bottom: 2px solid #000; font-size: 0.85em; }
.tasks th { font-weight: 400; }
.tasks .tick { display: inline-block; width: 0.9em; height: 0.9em; border: 1px solid #000; }
.tasks .panel { grid-template-columns: 1fr; margin: 0 0 6px; }
.tasks .how, .basis { font-size: 0.85em; }
.record th { font-weight: 400; }
.record td { min-width: 2.5em; }
.blank, .fill-line { display: inline-block; min-width: 7em; border-bottom: 1px solid #000; height: 1.1em; }
table .blank { min-width: 3em; }
.to-fill { display: flex; gap: 12px; padding: 8px 0; }
.fill-line { flex: 1; }
.marked { list-style: square; padding-left: 1.2em; }
.phone { font-size: 1.3em; font-weight: 700; }
.halt { background: #000; color: #fff; padding: 8px 14px; display: grid; grid-template-columns: 5em 1fr; }
.halt a { color: #fff; }
.halt + .halt { border-top: 1px solid #fff; }
.call-line { margin: 4px 0 28px; }
.symptoms li { display: flex; justify-content: space-between; gap: 12px; border-bottom: 1px solid #999; padding: 6px 0; }
.page::before { content: "see "; }
[data-changed] { box-shadow: -8px 0 0 -4px #000; }
tr[data-changed] { box-shadow: none; }
tr[data-changed] > :first-child { box-shadow: -8px 0 0 -4px #000; }
@media (max-width: 520px) {
  body { padding: 0 10px 32px; }
  .panel { grid-template-columns: 1fr; }
  th, td { padding-right: 6px; font-size: 0.9em; hyphens: auto; }
  .to-fill { display: block; }
  .tasks thead { display: none; }
  .tasks td[data-head]::before { content: attr(data-head) ": "; }
  .tasks, .tasks tbody, .tasks tr, .tasks th, .tasks td { display: block; }
  .tasks th, .tasks td { border: 0; padding: 2px 0; }
  .tasks tr { border-bottom: 1px solid #999; padding: 6px 0; }
  .record .by, .record .date { font-size: 0.7em; padding-right: 2px; }
}
@media print {
  .leaf { break-before: page; border: 0; margin: 0; }
  .cover-leaf { break-before: auto; }
  .step, .panel, tr { break-inside: avoid; }
  .band, .plate, .panel { -webkit-print-color-adjust: exact; print-color-adjust: exact; }
}
/* labels: a list on a screen, whatever the label sheet */
.label { width: auto !important; height: auto !important; border: 1px solid #000; margin: 8px 0; overflow: hidden; }
.label-head { font-size: 1em; font-weight: 400; }
.label-side { float: left; }
.label-word { font-size: 1.5em; font-weight: 700; }
.label-name { font-weight: 700; }
