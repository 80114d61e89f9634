package org.rigleaf.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.rigleaf.sheets.Topic;

/** What the HTML promises to its readers, people and programs. */
class MarksTest {
  private static final Document PAGE = Jsoup.parse(Sample.HTML);

  @Test
  void everyTopicIsASectionThatTheContentsLeadTo() {
    for (Topic topic : Sample.BINDER.topics()) {
      Element section = PAGE.selectFirst("section[data-topic=" + topic.id() + "]");
      assertNotNull(section, topic.id());
      assertNotNull(PAGE.selectFirst(".contents a[href=#" + section.id() + "]"), topic.id());
    }
  }

  @Test
  void aTopicHoldsNoEditionDateOrPage() {
    for (Topic topic : Sample.BINDER.topics()) {
      String html = Sample.TEMPLATES.topic(topic, Sample.BINDER);
      assertFalse(html.contains("2026-05-02") || html.contains("DRAFT"), html);
      assertFalse(html.contains("furniture"), html);
    }
  }

  @Test
  void aReminderIsTheFirstChildOfItsStepAndStandsBeforeTheAction() {
    Element step = PAGE.selectFirst("li[data-step=connect-shore-power.plug]");
    assertNotNull(step);
    Element reminder = step.firstElementChild();
    assertNotNull(reminder);
    assertEquals("hot-plug", reminder.attr("data-caution-ref"));
    assertTrue(reminder.text().startsWith("WARNING Plug hot under load. Push it home"));
    List<Element> all = step.getAllElements();
    assertTrue(all.indexOf(reminder) < all.indexOf(step.selectFirst(".action")));
  }

  @Test
  void aCautionStandsOnceWithItsFourPartsAndNoTriangleOnANotice() {
    for (String id : List.of("energised-body", "hot-plug", "hot-tap-water", "pump-dry")) {
      assertEquals(1, PAGE.select("[data-caution=" + id + "]").size(), id);
    }
    Element danger = PAGE.selectFirst("[data-caution=energised-body]");
    assertNotNull(danger);
    for (String part : List.of(".hazard", ".consequence", ".avoid", ".defer")) {
      assertEquals(1, danger.select(part).size(), part);
    }
    for (Element panel : PAGE.select("[data-level]")) {
      int triangles = panel.attr("data-level").equals("notice") ? 0 : 1;
      assertEquals(triangles, panel.select("svg.triangle").size(), panel.outerHtml());
    }
  }

  @Test
  void aFigureCarriesItsMarks() {
    Element figure = PAGE.selectFirst("[data-figure=fresh.water]");
    assertNotNull(figure);
    assertEquals("38.0\u00a0gal", figure.wholeText());
    assertEquals("38.0", figure.attr("data-value"));
    assertEquals("gal", figure.attr("data-unit"));
    assertEquals("given", figure.attr("data-from"));
    assertTrue(figure.hasAttr("data-assumes"));
  }

  @Test
  void gearLinesToFillAndTypicalValuesAreMarked() {
    assertNotNull(PAGE.selectFirst("[data-gear=electric.shore][data-code=E1]"));
    assertNotNull(PAGE.selectFirst("[data-blank=where-the-phone-works]"));
    assertNotNull(PAGE.selectFirst("[data-blank=tire.rear-left]"));
    assertNotNull(PAGE.selectFirst("[data-assumed=water.density]"));
  }

  @Test
  void everyStepIsAnItemOfAListInsideItsProcedure() {
    for (Element step : PAGE.select("[data-step]")) {
      assertEquals("li", step.normalName());
      assertNotNull(step.closest("ol"), step.attr("data-step"));
      Element procedure = step.closest("[data-procedure]");
      assertNotNull(procedure);
      assertTrue(step.attr("data-step").startsWith(procedure.attr("data-procedure") + "."));
      assertEquals(1, step.select(".action").size());
    }
  }

  @Test
  void headingsSkipNoLevelAndOneIsTheFirst() {
    assertEquals(1, PAGE.select("h1").size());
    assertEquals("h1", PAGE.select("h1, h2, h3").get(0).normalName());
    assertEquals(0, PAGE.select("h4, h5, h6").size());
  }

  @Test
  void theFileNeedsNoNetwork() {
    assertEquals(0, PAGE.select("script, link, img, iframe, object").size());
    assertFalse(Sample.HTML.contains("url(") || Sample.HTML.contains("@import"));
  }

  @Test
  void idsStandOnce() {
    List<String> ids = PAGE.select("[id]").eachAttr("id");
    assertEquals(ids.size(), Set.copyOf(ids).size());
  }
}
