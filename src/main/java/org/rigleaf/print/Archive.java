package org.rigleaf.print;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/**
 * Makes a PDF fit to be kept: its dates are the edition's, its colors are named, the profile it was
 * made from is attached.
 */
final class Archive {
  private static final String TIME = "(<xmp:(CreateDate|ModifyDate|MetadataDate)>)[^<]*";

  private Archive() {}

  /** What the colors of our styles mean: sRGB, as the Java library has it. */
  static byte[] colors() {
    return ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
  }

  /** Sets the dates and attaches the source. */
  static void finish(PDDocument pdf, Imprint imprint) throws IOException {
    GregorianCalendar midnight =
        GregorianCalendar.from(imprint.date().atStartOfDay(ZoneOffset.UTC));
    PDDocumentInformation about = pdf.getDocumentInformation();
    about.setCreationDate(midnight);
    about.setModificationDate(midnight);
    describe(pdf.getDocumentCatalog().getMetadata(), imprint);
    attach(pdf, imprint, midnight);
    pdf.setDocumentId(imprint.id());
  }

  private static void describe(PDMetadata metadata, Imprint imprint) throws IOException {
    String xmp = new String(metadata.toByteArray(), StandardCharsets.UTF_8);
    String dated = xmp.replaceAll(TIME, "$1" + imprint.date() + "T00:00:00Z");
    metadata.importXMPMetadata(dated.getBytes(StandardCharsets.UTF_8));
  }

  private static void attach(PDDocument pdf, Imprint imprint, GregorianCalendar date)
      throws IOException {
    byte[] text = imprint.profile().getBytes(StandardCharsets.UTF_8);
    PDEmbeddedFile file = new PDEmbeddedFile(pdf, new ByteArrayInputStream(text));
    file.setSubtype("application/yaml");
    file.setSize(text.length);
    file.setModDate(date);
    PDComplexFileSpecification named = new PDComplexFileSpecification();
    named.setFile(imprint.fileName());
    named.setFileUnicode(imprint.fileName());
    named.setFileDescription("The profile that this was made from, without private values");
    named.setEmbeddedFile(file);
    named.setEmbeddedFileUnicode(file);
    named.getCOSObject().setName(COSName.AF_RELATIONSHIP, "Source");
    list(pdf.getDocumentCatalog(), named);
  }

  private static void list(PDDocumentCatalog catalog, PDComplexFileSpecification file) {
    PDEmbeddedFilesNameTreeNode files = new PDEmbeddedFilesNameTreeNode();
    files.setNames(Map.of(file.getFileUnicode(), file));
    PDDocumentNameDictionary names = new PDDocumentNameDictionary(catalog);
    names.setEmbeddedFiles(files);
    catalog.setNames(names);
    COSArray associated = new COSArray();
    associated.add(file);
    catalog.getCOSObject().setItem(COSName.AF, associated);
  }
}
