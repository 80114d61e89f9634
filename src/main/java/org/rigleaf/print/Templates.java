package org.rigleaf.print;

import freemarker.cache.ClassTemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.TemplateClassResolver;
import freemarker.core.TemplateHTMLOutputModel;
import freemarker.template.Configuration;
import freemarker.template.DefaultObjectWrapperBuilder;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.rigleaf.sheets.Binder;
import org.rigleaf.sheets.CardSheet;
import org.rigleaf.sheets.DrawingBlock;
import org.rigleaf.sheets.Edition;
import org.rigleaf.sheets.Effective;
import org.rigleaf.sheets.Paper;
import org.rigleaf.sheets.Topic;

/**
 * Typed records to HTML.
 *
 * <p>The HTML is well-formed XML too, so that {@link Press} reads the very file that is delivered.
 * All text is escaped; a drawing is the one thing let through as it is. May be shared by threads.
 */
public final class Templates {
  private static final HTMLOutputFormat HTML = HTMLOutputFormat.INSTANCE;

  private final Configuration configuration = configuration();

  /**
   * The topic as a {@code <section data-topic>} without edition, date or page: what the digest is
   * taken of.
   *
   * @throws IllegalStateException if a template fails
   */
  public String topic(Topic topic, Binder binder) {
    return fill("sheets/topic.ftlh", Map.of("t", topic, "b", binder));
  }

  /**
   * The whole document, one file that needs no network.
   *
   * @param topicsHtml what {@link #topic} gave for each of the binder's topics, in their order
   * @param effective the edition in which each topic last changed
   * @param record each edition up to this one
   * @throws IllegalArgumentException if there are more or fewer topics in HTML than in the binder
   * @throws IllegalStateException if a template fails
   */
  public String binder(
      Binder binder, List<String> topicsHtml, List<Effective> effective, List<Edition> record) {
    if (topicsHtml.size() != binder.topics().size()) {
      throw new IllegalArgumentException(
          topicsHtml.size() + " topics in HTML for a binder of " + binder.topics().size());
    }
    List<TemplateHTMLOutputModel> topics = topicsHtml.stream().map(Templates::markup).toList();
    return fill(
        "sheets/binder.ftlh",
        Map.of("b", binder, "topics", topics, "effective", effective, "record", record));
  }

  /**
   * A document other than the binder.
   *
   * @param name of its template
   * @param model all that the template may see, as {@code d}
   * @throws IllegalStateException if a template fails
   */
  public String sheet(String name, Record model) {
    return fill("sheets/" + name + ".ftlh", Map.of("d", model));
  }

  /**
   * The style for paper.
   *
   * @param look name of a template in {@code looks}, without its ending
   * @param tabs how many thumb tabs share the outer edge
   */
  String printStyle(String look, Paper paper, int tabs) {
    return fill("looks/" + look + ".ftl", Map.of("paper", paper, "tabs", tabs));
  }

  /** The style for cards on paper. */
  String cardStyle(CardSheet sheet) {
    return fill("looks/cards.ftl", Map.of("sheet", sheet, "size", sheet.size()));
  }

  private String fill(String template, Map<String, Object> model) {
    try {
      StringWriter out = new StringWriter();
      configuration.getTemplate(template).process(model, out);
      return out.toString();
    } catch (TemplateException e) {
      throw new IllegalStateException(template + ": " + e.getMessage(), e);
    } catch (IOException e) {
      throw new UncheckedIOException(template, e);
    }
  }

  private static TemplateHTMLOutputModel markup(String html) {
    try {
      return HTML.fromMarkup(html);
    } catch (TemplateModelException e) {
      throw new IllegalStateException(e);
    }
  }

  static Configuration configuration() {
    DefaultObjectWrapperBuilder wrapper =
        new DefaultObjectWrapperBuilder(Configuration.VERSION_2_3_34);
    wrapper.setMemberAccessPolicy(new RecordAccess());
    wrapper.setExposeFields(false);
    Configuration c = new Configuration(Configuration.VERSION_2_3_34);
    c.setTemplateLoader(new ClassTemplateLoader(Templates.class, "/templates"));
    c.setObjectWrapper(wrapper.build());
    c.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    c.setAPIBuiltinEnabled(false);
    c.setInterpolationSyntax(Configuration.DOLLAR_INTERPOLATION_SYNTAX);
    c.setDefaultEncoding("UTF-8");
    c.setLocale(Locale.ROOT);
    c.setLocalizedLookup(false);
    c.setNumberFormat("computer");
    c.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    c.setLogTemplateExceptions(false);
    c.setWrapUncheckedExceptions(true);
    c.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
    c.setSharedVariable("drawn", (TemplateMethodModelEx) Templates::drawn);
    return c;
  }

  /** The drawing of a {@link DrawingBlock}; refuses any other argument. */
  private static Object drawn(List<?> arguments) throws TemplateModelException {
    if (arguments.size() == 1
        && arguments.get(0) instanceof freemarker.ext.util.WrapperTemplateModel w
        && w.getWrappedObject() instanceof DrawingBlock block) {
      return markup(block.svg());
    }
    throw new TemplateModelException("drawn() takes a drawing");
  }
}
