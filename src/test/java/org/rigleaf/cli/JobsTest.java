package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A fleet: several rigs at once, and a bad one among them. */
class JobsTest {
  private static final String GOOD = "src/test/resources/profiles/bulrush.yaml";

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
  }

  private void fleet() throws IOException {
    String text = Files.readString(Path.of(GOOD));
    for (String name : new String[] {"arum", "fern", "moss"}) {
      Files.writeString(folder.resolve(name + ".yaml"), text);
    }
    Files.writeString(folder.resolve("broken.yaml"), "name: Broken\nlenght: 20 ft\n");
  }

  @Test
  void twoAtATimeSayAndPrintTheSameAsOneAtATime() throws IOException {
    fleet();
    String to = folder.resolve("out").toString();
    assertEquals(1, run("build", folder.toString(), "--out", to));
    byte[] alone = Files.readAllBytes(folder.resolve("out/moss/binder.pdf"));
    String said = out + "" + err;
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    assertEquals(1, run("build", folder.toString(), "--out", to, "--jobs", "2"));
    assertEquals(said, out + "" + err);
    assertArrayEquals(alone, Files.readAllBytes(folder.resolve("out/moss/binder.pdf")));
  }

  @Test
  void aBadOneStopsNoneOfTheOthers() throws IOException {
    fleet();
    String to = folder.resolve("out").toString();
    assertEquals(1, run("build", folder.toString(), "--out", to, "--jobs", "2"));
    assertTrue(err.toString().contains("broken.yaml:2:1: lenght"), err.toString());
    for (String name : new String[] {"arum", "fern", "moss"}) {
      assertTrue(Files.exists(folder.resolve("out/" + name + "/binder.pdf")), name);
    }
  }

  @Test
  void noneAtATimeIsWrongUsage() {
    assertEquals(2, run("build", GOOD, "--jobs", "0"));
    assertTrue(err.toString().contains("--jobs starts at 1"), err.toString());
  }
}
