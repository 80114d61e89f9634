package org.rigleaf.print;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.rigleaf.sheets.Binder;

/** Writes the sample binder, or the long one, into a folder, to be looked at. */
final class PrintSample {
  private PrintSample() {}

  public static void main(String[] args) throws Exception {
    Path folder = Files.createDirectories(Path.of(args[0]));
    Templates templates = new Templates();
    Binder binder = args.length > 1 ? LongTopics.binder() : SampleBinder.binder();
    String html = SampleBinder.html(templates, binder);
    Files.writeString(folder.resolve("binder.html"), html);
    byte[] pdf = new Press(templates).pdf(html, binder.paper(), LocalDate.of(2026, 5, 2), 42);
    Files.write(folder.resolve("binder.pdf"), pdf);
  }
}
