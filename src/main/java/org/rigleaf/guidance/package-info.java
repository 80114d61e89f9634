/**
 * Reads the wording, keeps what applies to one rig, puts cautions before steps, sets task dates and
 * findings.
 */
package org.rigleaf.guidance;
