/**
 * Typed records to HTML, finished HTML to PDF: the only place that knows FreeMarker and
 * OpenHTMLtoPDF.
 */
package org.rigleaf.print;
