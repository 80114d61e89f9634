package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rigleaf.TestData;
import org.rigleaf.source.Fields;

/** The form of safety messages in the finished binder: words, signs, parts, places. */
class CautionRulesTest {
  private static final List<String> GRAVEST_FIRST =
      List.of("danger", "warning", "caution", "notice");
  private static final String ANY = "[data-caution], [data-caution-ref]";

  /** The word is one of four, and that of the register. */
  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#all")
  void theWordIsThatOfTheRegister(String rig) {
    Fields register = TestData.read("caution-triggers.yaml").group("cautions").orElseThrow();
    for (Element box : Printed.html(rig).select(ANY)) {
      String id =
          box.hasAttr("data-caution") ? box.attr("data-caution") : box.attr("data-caution-ref");
      String level = box.attr("data-level");
      assertTrue(GRAVEST_FIRST.contains(level), id + " " + level);
      assertEquals(TestData.text(register.group(id).orElseThrow(), "level"), level, id);
    }
    for (Element panel : Printed.html(rig).select(".panel")) {
      assertEquals(
          panel.attr("data-level").toUpperCase(java.util.Locale.ROOT),
          panel.selectFirst(".signal").text().strip());
    }
  }

  /** The triangle stands on danger, warning and caution, and never on a notice. */
  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#all")
  void theTriangleStandsOnceUnlessNobodyCanBeHurt(String rig) {
    for (Element panel : Printed.html(rig).select(".panel")) {
      int wanted = panel.attr("data-level").equals("notice") ? 0 : 1;
      assertEquals(wanted, panel.select("svg.triangle").size(), panel.text());
    }
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#all")
  void theWholeCautionSaysHazardConsequenceAndAvoidance(String rig) {
    for (Element box : Printed.html(rig).select("[data-caution]")) {
      for (String part : List.of(".hazard", ".consequence", ".avoid", ".defer")) {
        Element said = box.selectFirst(part);
        assertTrue(said != null && !said.text().isBlank(), box.attr("data-caution") + part);
      }
    }
  }

  /** A reminder stands in the step that it protects, before the action, in one panel. */
  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#all")
  void theReminderStandsBeforeItsStepInOnePanel(String rig) {
    for (Element reminder : Printed.html(rig).select("[data-caution-ref]")) {
      Element panel = reminder.closest(".panel");
      assertFalse(
          panel.nextElementSibling() != null && panel.nextElementSibling().hasClass("panel"),
          "two panels back to back: " + panel.text());
      Element step = panel.closest("li[data-step]");
      if (step == null) {
        boolean head =
            panel.parent().hasAttr("data-procedure")
                || panel.parent().hasClass("fault")
                || panel.closest("tr[data-upkeep]") != null;
        assertTrue(head, panel.text());
        assertTrue(before(panel, panel.parent().selectFirst(".action")), panel.text());
      } else {
        assertEquals(panel, step.firstElementChild(), step.attr("data-step"));
        assertTrue(before(panel, step.selectFirst(".action")), step.attr("data-step"));
      }
    }
  }

  private static boolean before(Element one, Element other) {
    List<Element> all = one.ownerDocument().getAllElements();
    return all.indexOf(one) < all.indexOf(other);
  }

  /**
   * The whole cautions stand before the first page of the arrival, each is called to mind
   * somewhere, and nothing is called to mind that is not told in full.
   */
  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#all")
  void theCautionsStandInFrontAndEachIsCalledToMind(String rig) {
    Document html = Printed.html(rig);
    TreeSet<String> whole = new TreeSet<>(html.select("[data-caution]").eachAttr("data-caution"));
    TreeSet<String> called =
        new TreeSet<>(html.select("[data-caution-ref]").eachAttr("data-caution-ref"));
    assertEquals(whole, called);
    Element first = html.selectFirst("[data-topic=arrive]");
    html.select("[data-caution]").forEach(c -> assertTrue(before(c, first), c.text()));
  }

  /** Where one panel tells of several dangers, it carries the gravest word. */
  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#all")
  void aPanelOfSeveralCarriesTheGravestWord(String rig) {
    Map<String, Integer> panels = new HashMap<>();
    for (Element panel : Printed.html(rig).select(".panel.reminder")) {
      List<String> levels = panel.select("[data-caution-ref]").eachAttr("data-level");
      int gravest = levels.stream().mapToInt(GRAVEST_FIRST::indexOf).min().getAsInt();
      assertEquals(GRAVEST_FIRST.get(gravest), panel.attr("data-level"), panel.text());
      panels.merge(levels.size() > 1 ? "several" : "one", 1, Integer::sum);
    }
    assertEquals(2, panels.size(), "panels of one and of several: " + panels);
  }
}
