package org.rigleaf.print;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** The little that printing needs of a document tree. */
final class Dom {
  private Dom() {}

  /**
   * Reads HTML that is well-formed XML. Nothing outside the text is fetched.
   *
   * @throws IllegalArgumentException if it is not well-formed
   */
  static Document parse(String html) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      DocumentBuilder builder = factory.newDocumentBuilder();
      builder.setErrorHandler(null);
      return builder.parse(new InputSource(new StringReader(withoutDoctype(html))));
    } catch (SAXException e) {
      throw new IllegalArgumentException("not well-formed: " + e.getMessage(), e);
    } catch (ParserConfigurationException | IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** XML must do without the one line that HTML begins with; any other declaration is refused. */
  private static String withoutDoctype(String html) {
    return html.strip().replaceFirst("^<!DOCTYPE html>", "");
  }

  /** Every element that fits, in order, as a list that stays while the tree changes. */
  static List<Element> all(Node root, Predicate<Element> fits) {
    List<Element> found = new ArrayList<>();
    walk(
        root,
        n -> {
          if (n instanceof Element e && fits.test(e)) {
            found.add(e);
          }
        });
    return found;
  }

  /** Every element of that name. */
  static List<Element> named(Node root, String name) {
    return all(root, e -> e.getTagName().equals(name));
  }

  /** Every element of that class. */
  static List<Element> ofClass(Node root, String name) {
    return all(root, e -> hasClass(e, name));
  }

  static boolean hasClass(Element e, String name) {
    return Arrays.asList(e.getAttribute("class").split(" ")).contains(name);
  }

  /** Visits the node and all below it, in document order. */
  static void walk(Node node, Consumer<Node> visit) {
    visit.accept(node);
    children(node).forEach(child -> walk(child, visit));
  }

  static List<Node> children(Node node) {
    return IntStream.range(0, node.getChildNodes().getLength())
        .mapToObj(node.getChildNodes()::item)
        .toList();
  }

  /** A new last child with the given attributes, names and values in turn. */
  static Element append(Element parent, String name, String... attributes) {
    Element child = parent.getOwnerDocument().createElementNS(parent.getNamespaceURI(), name);
    for (int i = 0; i < attributes.length; i += 2) {
      child.setAttribute(attributes[i], attributes[i + 1]);
    }
    parent.appendChild(child);
    return child;
  }

  static void remove(Node node) {
    node.getParentNode().removeChild(node);
  }
}
