package org.rigleaf.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.rigleaf.drawings.QrCode;
import org.rigleaf.guidance.CardText;
import org.rigleaf.guidance.Fault;
import org.rigleaf.guidance.OnCard;
import org.rigleaf.guidance.Procedure;
import org.rigleaf.guidance.Reminder;
import org.rigleaf.guidance.Show;
import org.rigleaf.guidance.Step;
import org.rigleaf.guidance.Wording;
import org.rigleaf.guidance.Words;
import org.rigleaf.rig.Rig;

/** Puts the cards of a rig together from the steps that the binder has too. */
public final class CardsMaker {
  /** Letter of the codes of cards; no system and no section of the binder has it. */
  private static final String LETTER = "K";

  private static final String CODED = "card.";

  private static final Pattern AMOUNT = Pattern.compile("\\d");
  private static final Set<String> GRAVE = Set.of("danger", "warning");

  private static final int LINES = 24; // of the contents a page, each two lines of type at most

  private final Rig rig;
  private final BinderMaker maker;
  private final Wording wording;
  private final CardSize size;

  /** A maker for cards of this size. */
  public CardsMaker(Rig rig, BinderMaker maker, Wording wording, CardSize size) {
    this.rig = rig;
    this.maker = maker;
    this.wording = wording;
    this.size = size;
  }

  /** Under which key the codes of an edition keep that of a card. */
  static String coded(String id) {
    return CODED + id;
  }

  /**
   * All cards, laid on their pages.
   *
   * @param effective the editions in which cards last changed, by id
   */
  public Cards cards(CardSheet sheet, boolean draft, List<Effective> effective) {
    List<Cards.Face> faces = faces(effective);
    List<List<Cards.Face>> pages = new ArrayList<>();
    for (int i = 0; i < faces.size(); i += sheet.count()) {
      pages.add(faces.subList(i, Math.min(faces.size(), i + sheet.count())));
    }
    return new Cards(rig.identity().name(), draft(draft), pages);
  }

  /**
   * The cards bound: a cover, the contents, a card a page.
   *
   * @param effective the editions in which cards last changed, by id
   */
  public Booklet booklet(boolean draft, List<Effective> effective) {
    List<Cards.Face> faces = faces(effective);
    List<Cards.Face> tasks = faces.stream().filter(f -> f.card().number() == 1).toList();
    int before = 1 + (tasks.size() + LINES - 1) / LINES; // the cover and the contents
    List<List<Booklet.Line>> contents = new ArrayList<>();
    for (int i = 0; i < tasks.size(); i++) {
      if (i % LINES == 0) {
        contents.add(new ArrayList<>());
      }
      CardTask task = tasks.get(i).task();
      int page = before + 1 + faces.indexOf(tasks.get(i));
      contents.get(i / LINES).add(new Booklet.Line(task.title(), task.emergency(), page));
    }
    return new Booklet(
        rig.identity().name(),
        wording.phrase("kind-" + rig.identity().kind().trait()),
        draft(draft),
        maker.edition(),
        new Words(List.of(maker.guide().filler().contact())),
        contents,
        faces);
  }

  private String draft(boolean draft) {
    return draft ? wording.phrase("draft") : "";
  }

  private List<Cards.Face> faces(List<Effective> effective) {
    return tasks().stream()
        .flatMap(t -> t.cards().stream().map(c -> new Cards.Face(t, c, of(t, effective))))
        .toList();
  }

  private Effective of(CardTask task, List<Effective> effective) {
    Edition now = maker.edition();
    return effective.stream()
        .filter(e -> e.id().equals(task.id()))
        .findFirst()
        .orElse(new Effective(task.id(), String.valueOf(now.number()), now.date()));
  }

  /** The tasks that this rig has, each on its cards. */
  public List<CardTask> tasks() {
    Map<CardText, List<Block>> wanted = new LinkedHashMap<>();
    for (CardText text : wording.cards()) {
      List<Block> blocks =
          text.condition().holds(maker.guide()::has) ? maker.blocks(shows(text)) : List.of();
      if (!parts(text, blocks, UnaryOperator.identity()).isEmpty()) {
        wanted.put(text, blocks);
      }
    }
    Map<String, String> codes =
        maker.codes(
            wanted.keySet().stream()
                .map(t -> new TopicCodes.Wanted(coded(t.id()), LETTER))
                .toList());
    List<CardRefs.Target> targets = new ArrayList<>();
    wanted.forEach(
        (text, blocks) ->
            targets.add(
                new CardRefs.Target(
                    title(text, blocks), codes.get(coded(text.id())), text.shows())));
    CardRefs refs = new CardRefs(wording, targets);
    List<CardTask> tasks = new ArrayList<>();
    wanted.forEach((text, blocks) -> tasks.add(task(text, blocks, codes, refs)));
    return tasks;
  }

  /** A title that tells of several tasks is not for a rig that has one of them. */
  private static String title(CardText text, List<Block> blocks) {
    long tasks = text.shows().stream().filter(Show.OfProcedure.class::isInstance).count();
    boolean own = text.title().isEmpty() || tasks > 1 && !several(blocks);
    return own ? procedure(blocks).map(Procedure::title).orElse("") : text.title();
  }

  private List<Show> shows(CardText text) {
    return text.shows().stream()
        .flatMap(
            s ->
                s instanceof Show.Listing l && l.what().equals("topic")
                    ? wording.shows(l.title()).stream()
                    : Stream.of(s))
        .toList();
  }

  private static List<CardTask.Part> parts(
      CardText text, List<Block> blocks, UnaryOperator<Words> way) {
    AtomicInteger number = new AtomicInteger();
    return blocks.stream()
        .flatMap(b -> named(b, blocks, parts(b, text.emergency(), number)))
        .map(p -> new CardTask.Part(p.title(), p.lines().stream().map(l -> l.said(way)).toList()))
        .toList();
  }

  private CardTask task(
      CardText text, List<Block> blocks, Map<String, String> codes, CardRefs refs) {
    Optional<Procedure> procedure = procedure(blocks);
    Words done = several(blocks) ? Words.NONE : procedure.map(Procedure::done).orElse(Words.NONE);
    CardTask task =
        new CardTask(
            rig.identity().name(),
            text.id(),
            codes.get(coded(text.id())),
            title(text, blocks),
            text.emergency(),
            procedure.map(Procedure::mode).orElse(text.mode()),
            text.emergency() ? List.of() : rig.page().map(QrCode::of).stream().toList(),
            text.emergency() ? "" : page(text),
            new Words(List.of(maker.guide().filler().contact())),
            List.of());
    List<Reminder> reminders = reminders(blocks);
    List<CardTask.Part> parts = parts(text, blocks, refs::onCard);
    return task.with(new CardCutter(size, task, reminders, parts, done).cut(), reminders, done);
  }

  /** The code of the topic that prints the same task. */
  private String page(CardText text) {
    return wording.topics().stream()
        .filter(t -> t.shows().contains(text.shows().get(0)))
        .findFirst()
        .map(t -> maker.code(t.id()))
        .orElse("");
  }

  private static boolean several(List<Block> blocks) {
    return blocks.stream().filter(ProcedureBlock.class::isInstance).count() > 1;
  }

  /** Where a card has several tasks, each begins with its title. */
  private static Stream<CardTask.Part> named(
      Block block, List<Block> blocks, Stream<CardTask.Part> parts) {
    List<CardTask.Part> filled = new ArrayList<>(parts.filter(p -> !p.lines().isEmpty()).toList());
    if (several(blocks) && block instanceof ProcedureBlock p && !filled.isEmpty()) {
      filled.set(0, new CardTask.Part(p.procedure().title(), filled.get(0).lines()));
    }
    return filled.stream();
  }

  private static Optional<Procedure> procedure(List<Block> blocks) {
    return blocks.stream()
        .filter(ProcedureBlock.class::isInstance)
        .map(b -> ((ProcedureBlock) b).procedure())
        .findFirst();
  }

  private static List<Reminder> reminders(List<Block> blocks) {
    return blocks.stream()
        .flatMap(
            b ->
                b instanceof ProcedureBlock p
                    ? p.procedure().reminders().stream()
                    : b instanceof FaultBlock f ? f.fault().reminders().stream() : Stream.of())
        .toList();
  }

  private static Stream<CardTask.Part> parts(Block block, boolean urgent, AtomicInteger number) {
    if (block instanceof ProcedureBlock p) {
      return p.procedure().groups().stream()
          .map(g -> part(g.title(), onCard(g.steps()), urgent, number));
    } else if (block instanceof FaultBlock f) {
      return Stream.of(part("", f.fault().checks(), urgent, number), stops(f.fault()));
    } else if (block instanceof TableBlock t) {
      return Stream.of(
          new CardTask.Part(
              t.heads().get(0),
              t.rows().stream()
                  .<CardLine>map(r -> new CardLine.Fact(r.get(0), r.get(1)))
                  .toList()));
    }
    LinesBlock lines = (LinesBlock) block;
    return Stream.of(
        new CardTask.Part(
            lines.title(),
            lines.lines().stream().<CardLine>map(l -> new CardLine.Fact(l, Words.NONE)).toList()));
  }

  private static List<Step> onCard(List<Step> steps) {
    return steps.stream().filter(s -> s.card() != OnCard.NO).toList();
  }

  private static CardTask.Part part(
      String title, List<Step> steps, boolean urgent, AtomicInteger number) {
    return new CardTask.Part(
        title,
        steps.stream()
            .<CardLine>map(s -> step(number.incrementAndGet(), s, urgent || grave(s)))
            .toList());
  }

  private static CardLine step(int number, Step step, boolean grave) {
    boolean own = step.see().runs().size() > 1 || AMOUNT.matcher(step.see().plain()).find();
    own |= step.card() == OnCard.SEE;
    return new CardLine.OfStep(number, step, own || grave && !step.ifNot().empty(), grave);
  }

  private static boolean grave(Step step) {
    return step.reminders().stream().anyMatch(r -> GRAVE.contains(r.level()));
  }

  private static CardTask.Part stops(Fault fault) {
    return new CardTask.Part(
        "",
        fault.stops().stream()
            .<CardLine>map(s -> new CardLine.Fact(Words.of(s.by()), s.text()))
            .toList());
  }
}
