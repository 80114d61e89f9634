/**
 * Every number of the guide: id, formula, unit, source, check, in one file a trade; date
 * arithmetic.
 */
package org.rigleaf.figures;
