<#-- The style of the one file on a screen; a browser that prints it takes the paper from the same record. -->
body { margin: 0 auto; padding: 0 1rem 4rem; max-width: 50rem; font: 1rem/1.4 Roboto, "DejaVu Sans", system-ui, sans-serif; color: #000; background: #fff; }
.tab { display: none; }
