package org.rigleaf.print;

import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * The wall around printing: a document may come from a stranger's profile, so nothing that it names
 * is fetched, from the network or from disk. A photo stands in the document itself.
 */
final class Outside {
  private static final List<String> FETCHED =
      List.of("src", "srcset", "href", "xlink:href", "data", "poster", "background");
  private static final Set<String> PROTOCOLS = Set.of("http", "https", "file", "jar", "ftp");

  /** A photo as the sheets hold it; the data of no other kind of file are let in. */
  private static final Pattern PHOTO = Pattern.compile("data:image/jpeg;base64,[A-Za-z0-9+/]+=*");

  private Outside() {}

  private static boolean photo(String uri) {
    return uri != null && PHOTO.matcher(uri).matches();
  }

  /**
   * Refuses a document that names anything outside itself. A link to follow is no such thing.
   *
   * @throws IllegalArgumentException with what it names
   */
  static void refuse(Document document) {
    for (Element e : Dom.all(document, e -> true)) {
      for (int i = 0; i < e.getAttributes().getLength(); i++) {
        refuse(e, (Attr) e.getAttributes().item(i));
      }
      if (e.getTagName().equals("style")) {
        refuseStyle(e.getTextContent());
      }
    }
  }

  /** The second wall, inside the renderer. */
  static void close(PdfRendererBuilder builder) {
    builder.useUriResolver(
        (base, uri) -> uri != null && (uri.startsWith("#") || photo(uri)) ? uri : null);
    builder.useProtocolsStreamImplementation(Outside::never, PROTOCOLS);
    for (ExternalResourceControlPriority time : ExternalResourceControlPriority.values()) {
      builder.useExternalResourceAccessControl((uri, type) -> photo(uri), time);
    }
  }

  private static void refuse(Element e, Attr attribute) {
    String value = attribute.getValue().strip();
    if (FETCHED.contains(attribute.getName())
        && !e.getTagName().equals("a")
        && !value.startsWith("#")
        && !(e.getTagName().equals("img") && photo(value))) {
      never(value);
    }
    refuseStyle(value);
  }

  private static void refuseStyle(String style) {
    String plain = style.replace(" ", "");
    boolean names = plain.contains("url(") && !plain.contains("url(#");
    if (names || plain.contains("@import")) {
      never(style);
    }
  }

  private static <T> T never(String uri) {
    throw new IllegalArgumentException("nothing is fetched while printing: " + uri);
  }
}
