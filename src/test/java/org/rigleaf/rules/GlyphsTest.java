package org.rigleaf.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rigleaf.cli.EverySheet;

/** What a reader outdoors needs of every sign on every sheet; docs/printed-rules.md tells why. */
class GlyphsTest {
  private static final double ROUNDING = 0.05; // of a size in the file
  private static final int MOST_LOOKED_AT = 24; // pages a document are drawn to see their color
  private static final Pattern SHOUTED = Pattern.compile("\\b[A-Z]{2,}(?:[ ,]+[A-Z]{2,}){3,}\\b");

  @ParameterizedTest
  @MethodSource("org.rigleaf.cli.EverySheet#pdfs")
  void nothingIsSmallerThanTenPoints(String rig, String file) {
    assertEquals(Set.of(), small(Pages.of(rig, file), 10));
  }

  private static Set<String> small(Pages pages, double least) {
    return pages.glyphs().stream()
        .filter(g -> g.size() < least - ROUNDING)
        .map(g -> "page " + g.page() + ": '" + g.sign() + "' of " + g.size() + " pt")
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /**
   * Height of capitals: 16 minutes of arc (NUREG-0700 as quoted), 6.283 x distance x minutes /
   * 21600. A capital of DejaVu Sans is 0.729 of its size.
   */
  @ParameterizedTest
  @MethodSource("org.rigleaf.cli.EverySheet#pdfs")
  void capitalsCanBeReadAtTheDistanceOfTheSheet(String rig, String file) {
    boolean card = file.equals("cards.pdf") || file.equals("booklet.pdf");
    double capital = 6.283 * (card ? 600 : 400) * 16 / 21600;
    double points = capital / 25.4 * 72 / 0.729;
    Pages pages = Pages.of(rig, file);
    long low = pages.glyphs().stream().filter(g -> g.size() < points - ROUNDING).count();
    assertTrue(low <= pages.glyphs().size() * (card ? 0.4 : 0), low + " signs under " + points);
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.cli.EverySheet#pdfs")
  void everySignStandsOutFromWhatIsBehindIt(String rig, String file) throws IOException {
    assertEquals(Set.of(), pale(EverySheet.file(rig, file), Pages.of(rig, file)));
  }

  /** Signs with too little contrast: by color on white; white ones by the picture of their page. */
  private static Set<String> pale(byte[] bytes, Pages pages) throws IOException {
    Set<String> pale = new TreeSet<>();
    Map<Integer, List<Glyph>> white = new TreeMap<>();
    for (Glyph g : pages.glyphs()) {
      if (g.white()) {
        white.computeIfAbsent(g.page(), k -> new ArrayList<>()).add(g);
      } else if (Contrast.of(g.rgb(), 0xffffff) < Contrast.least(g)) {
        pale.add("page " + g.page() + ": '" + g.sign() + "' in " + Integer.toHexString(g.rgb()));
      }
    }
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      int step = Math.max(1, white.size() / MOST_LOOKED_AT);
      List<Integer> looked = white.keySet().stream().toList();
      for (int i = 0; i < looked.size(); i += step) {
        BufferedImage picture = Pages.picture(pdf, looked.get(i));
        white.get(looked.get(i)).stream().flatMap(g -> pale(g, picture)).forEach(pale::add);
      }
    }
    return pale;
  }

  private static Stream<String> pale(Glyph g, BufferedImage picture) {
    int behind = Contrast.behind(picture, g);
    boolean enough = Contrast.of(0xffffff, behind) >= Contrast.least(g);
    String seen =
        "page " + g.page() + ": white '" + g.sign() + "' on " + Integer.toHexString(behind);
    return enough ? Stream.empty() : Stream.of(seen);
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.cli.EverySheet#pdfs")
  void nothingIsShoutedOrSlanted(String rig, String file) {
    assertEquals(Set.of(), shouted(Pages.of(rig, file)));
  }

  private static Set<String> shouted(Pages pages) {
    Set<String> found = new TreeSet<>();
    pages
        .lines()
        .forEach(
            (page, lines) ->
                lines.stream()
                    .flatMap(l -> SHOUTED.matcher(l).results())
                    .map(MatchResult::group)
                    .forEach(l -> found.add("page " + page + ": " + l)));
    pages.glyphs().stream()
        .filter(g -> g.font().matches(".*(Oblique|Italic).*"))
        .forEach(g -> found.add("page " + g.page() + ": slanted " + g.sign()));
    return found;
  }

  /** Not of cards, which stand side by side: their lines are short by their width. */
  @ParameterizedTest
  @MethodSource("org.rigleaf.cli.EverySheet#pdfs")
  void linesAreNotTooLong(String rig, String file) {
    Set<String> found = new TreeSet<>();
    if (!file.equals("cards.pdf") && !file.equals("booklet.pdf")) {
      found.addAll(longer(Pages.of(rig, file), 95));
    }
    assertEquals(Set.of(), found);
  }

  private static Set<String> longer(Pages pages, int most) {
    Set<String> found = new TreeSet<>();
    pages
        .lines()
        .forEach(
            (page, lines) ->
                lines.stream()
                    .filter(l -> l.length() > most)
                    .forEach(l -> found.add("page " + page + ": " + l)));
    return found;
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.cli.EverySheet#pdfs")
  void everyPageSaysWhatItBelongsTo(String rig, String file) {
    Pages pages = Pages.of(rig, file);
    String name = rig.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + rig.substring(1);
    boolean inside = file.equals("cards.pdf") || file.equals("booklet.pdf");
    List<Integer> mute = new ArrayList<>();
    for (int page = 1; page <= pages.count(); page++) {
      String text = pages.text(page);
      boolean numbered = inside || text.matches("(?s).*\\b\\d+ of \\d+\\b.*");
      boolean cover = page == 1 || inside && page <= 4 || text.isBlank();
      if (!cover && !(text.contains(name) && text.contains("dition") && numbered)) {
        mute.add(page);
      }
    }
    assertEquals(List.of(), mute);
  }

  /** A page with one fault of each kind: the checks above must name it. */
  @Test
  void everyKindOfFaultIsNamedWithItsPage() throws IOException {
    byte[] wrong = WrongPage.pdf();
    Pages pages = Pages.read(wrong);
    assertTrue(small(pages, 10).contains("page 1: 't' of 8.0 pt"), "" + small(pages, 10));
    String pale = "" + pale(wrong, pages);
    assertTrue(pale.contains("page 1: 'p' in aaaaaa"), pale);
    assertTrue(pale.contains("page 1: white 'w' on ffd100"), pale);
    assertEquals(Set.of("page 1: TURN OFF ALL OF IT"), shouted(pages));
    assertEquals(Set.of("page 1: TURN OFF ALL OF IT"), longer(pages, 17));
  }

  @Test
  void emergencyStepsAreLarge() {
    Pages pages = Pages.of("sedge", "binder.pdf");
    int fire =
        pages.lines().keySet().stream()
            .filter(p -> pages.text(p).contains("S-1 ") && pages.text(p).contains("Fire"))
            .filter(p -> pages.text(p).contains("1 of "))
            .findFirst()
            .orElseThrow();
    long large =
        pages.glyphs().stream()
            .filter(g -> g.page() == fire && g.bold() && g.size() >= 13.95)
            .count();
    assertTrue(large > 100, "page " + fire + ": " + large + " signs of 14 pt bold");
  }

  @Test
  void theFrontSaysWhatTheBinderIs() {
    Pages pages = Pages.of("sedge", "binder.pdf");
    String front = pages.text(1) + pages.text(2);
    Stream.of(
            "Sedge",
            "Travel trailer",
            "Heron Flats Trailer Library",
            "Edition",
            "For whoever",
            "Maker's manuals",
            "licensed technicians")
        .forEach(s -> assertTrue(front.contains(s), s + " is not in front: " + front));
  }

  @Test
  void handingOverHasThreeParts() {
    Document sheet =
        Jsoup.parse(
            new String(EverySheet.file("sedge", "walk-through.html"), StandardCharsets.UTF_8));
    List<String> heads = sheet.select("h2").eachText();
    assertEquals(3, heads.size(), "" + heads);
  }

  @Test
  void everyLevelHasABorderOfItsOwn() throws IOException {
    Map<String, String> borders = Styles.of("binder", "border", "\\.level-(\\w+)");
    assertEquals(Set.of("danger", "warning", "caution", "notice"), borders.keySet());
    assertEquals(4, new TreeSet<>(borders.values()).size(), "" + borders);
  }

  @Test
  void linesStandApart() throws IOException {
    List<String> tight =
        Styles.leading("binder").stream()
            .filter(r -> r.share() < (r.size() > 14 ? 1.15 : 1.2)) // headings are one or two lines
            .map(Object::toString)
            .toList();
    assertEquals(List.of(), tight);
  }
}
