package org.rigleaf.print;

import java.time.LocalDate;

/**
 * What a PDF says of itself.
 *
 * @param date the only date that it carries: that of the edition
 * @param id names the file inside itself; the same input should give the same id
 * @param fileName of the profile that it was made from
 * @param profile its text in the plain form, without private values; attached as the source
 */
public record Imprint(LocalDate date, long id, String fileName, String profile) {}
