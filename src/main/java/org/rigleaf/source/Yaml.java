package org.rigleaf.source;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonToken;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/**
 * Reads one YAML 1.2 document into nodes. Refused, each with its own message: text that is not
 * UTF-8, an empty file, a second document, aliases, doubled keys, keys without a value, files over
 * 1 MB and nesting deeper than 20.
 */
public final class Yaml {
  private static final int LARGEST = 1_000_000; // characters; a full profile has about 10,000
  private static final int DEEPEST = 20; // levels; a full profile has 6
  private static final YAMLFactory FACTORY = new YAMLFactory();

  private final String file;
  private final String[] lines;
  private final YAMLParser parser;
  private final Problems problems;

  private Yaml(String file, String text, Problems problems) {
    this.file = file;
    this.lines = text.split("\n", -1);
    this.problems = problems;
    this.parser =
        (YAMLParser) FACTORY.createParser(tools.jackson.core.ObjectReadContext.empty(), text);
  }

  /**
   * Reads a file.
   *
   * @throws IOException if the file cannot be read
   */
  public static Optional<Node> read(Path path, String name, Problems problems) throws IOException {
    return read(Files.readAllBytes(path), name, problems);
  }

  /** Reads the bytes of a file called {@code name}; empty when nothing usable came out. */
  public static Optional<Node> read(byte[] bytes, String name, Problems problems) {
    Position start = Position.start(name);
    if (bytes.length > LARGEST) {
      problems.add(start, "", "the file is larger than 1 MB", "a profile has a few hundred lines");
      return Optional.empty();
    }
    Optional<String> text = decode(bytes, start, problems);
    return text.flatMap(t -> new Yaml(name, t, problems).document());
  }

  private static Optional<String> decode(byte[] bytes, Position start, Problems problems) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
    } catch (CharacterCodingException e) {
      problems.add(start, "", "the file is not UTF-8 text", "save it as UTF-8");
      return Optional.empty();
    }
  }

  private Optional<Node> document() {
    try {
      if (parser.nextToken() == null) {
        problems.add(Position.start(file), "", "the file is empty", "start with 'rig:'");
        return Optional.empty();
      }
      Node node = value("", 0);
      if (parser.nextToken() != null) {
        problems.add(here(), "", "a second document begins here", "keep one document in a file");
      }
      return Optional.of(node);
    } catch (Refused e) {
      return Optional.empty();
    } catch (JacksonException e) {
      syntaxError(e);
      return Optional.empty();
    }
  }

  private Node value(String key, int depth) {
    Position at = here();
    if (depth > DEEPEST) {
      problems.add(
          at, key, "nested deeper than " + DEEPEST + " levels", "a profile needs 6 levels");
      throw new Refused();
    }
    if (parser.isCurrentAlias()) {
      problems.add(at, key, "an alias (*) is not accepted", "write the value out");
      return new Node.Text("", true, at);
    }
    return switch (parser.currentToken()) {
      case START_OBJECT -> mapping(key, depth, at);
      case START_ARRAY -> sequence(key, depth, at);
      default -> new Node.Text(parser.getString(), quoted(at), at);
    };
  }

  private Node.Mapping mapping(String path, int depth, Position at) {
    Map<String, Node.Entry> entries = new LinkedHashMap<>();
    boolean flow = charAt(at) == '{';
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String key = parser.currentName();
      Position keyAt = here();
      String keyPath = path.isEmpty() ? key : path + "." + key;
      parser.nextToken();
      if (isEmptyValue()) {
        noValue(keyAt, keyPath, flow);
        continue;
      }
      Node node = value(keyPath, depth + 1);
      if (entries.putIfAbsent(key, new Node.Entry(keyAt, node)) != null) {
        problems.add(keyAt, keyPath, "this key stands twice", "keep one of the two");
      }
    }
    return new Node.Mapping(entries, at);
  }

  private Node.Sequence sequence(String path, int depth, Position at) {
    List<Node> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      if (isEmptyValue()) {
        problems.add(here(), path, "an item of this list is empty", "write it or take it out");
      } else {
        items.add(value(path, depth + 1));
      }
    }
    return new Node.Sequence(items, at);
  }

  private boolean isEmptyValue() {
    JsonToken token = parser.currentToken();
    if (token == JsonToken.VALUE_NULL) {
      return true;
    }
    return token == JsonToken.VALUE_STRING
        && parser.getString().isBlank()
        && !parser.isCurrentAlias();
  }

  private void noValue(Position at, String key, boolean flow) {
    String cure =
        flow
            ? "if the comma ended the text, put the text in quotes"
            : "write it or take the key out";
    problems.add(at, key, "this key has no value", cure);
  }

  private void syntaxError(JacksonException e) {
    Position at = Position.start(file);
    String wrong = e.getOriginalMessage();
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      if (cause instanceof MarkedYamlEngineException marked) {
        at = marked.getProblemMark().map(this::position).orElse(at);
        wrong = marked.getProblem();
      }
    }
    String first = wrong == null ? "" : wrong.lines().findFirst().orElse("");
    problems.add(
        at, "", "this is not YAML (" + first + ")", "look at the colons, quotes and indents");
  }

  private Position position(Mark mark) {
    return new Position(file, mark.getLine() + 1, mark.getColumn() + 1);
  }

  private Position here() {
    TokenStreamLocation at = parser.currentTokenLocation();
    return new Position(file, Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr()));
  }

  private boolean quoted(Position at) {
    char first = charAt(at);
    return first == '"' || first == '\'';
  }

  private char charAt(Position at) {
    String line = at.line() <= lines.length ? lines[at.line() - 1] : "";
    return at.column() <= line.length() ? line.charAt(at.column() - 1) : ' ';
  }

  /** Ends the reading after a problem that makes the rest unreadable. */
  private static final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Refused() {
      super(null, null, false, false);
    }
  }
}
