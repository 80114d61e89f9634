package org.rigleaf.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.rigleaf.guidance.Guide;
import org.rigleaf.guidance.Places;
import org.rigleaf.guidance.Wording;
import org.rigleaf.guidance.Words;
import org.rigleaf.rig.Photo;
import org.rigleaf.rig.Rig;

/** The keeper's photos with code, name and place of what they show. */
final class PhotoBlocks {
  private final Rig rig;
  private final Wording wording;
  private final Places places;

  PhotoBlocks(Rig rig, Wording wording, Guide guide) {
    this.rig = rig;
    this.wording = wording;
    this.places = guide.places();
  }

  /** A photo that shows several things prints once. */
  List<Block> photos(String title) {
    Map<String, List<Photo>> files = new LinkedHashMap<>();
    rig.photos().forEach(p -> files.computeIfAbsent(p.file(), f -> new ArrayList<>()).add(p));
    List<PhotosBlock.Shot> shots = files.values().stream().map(this::shot).toList();
    return shots.isEmpty() ? List.of() : List.of(new PhotosBlock(title, shots));
  }

  private PhotosBlock.Shot shot(List<Photo> photos) {
    var picture = photos.get(0).picture();
    List<Legend> shown = photos.stream().map(p -> legend(p.gear())).toList();
    String what =
        shown.stream().map(PhotoBlocks::line).distinct().collect(Collectors.joining("; "));
    return new PhotosBlock.Shot(
        picture.base64(),
        picture.height() > picture.width(),
        wording.phrase("photo-alt", Map.of("what", what)),
        shown);
  }

  private Legend legend(String id) {
    if (rig.gear(id).isEmpty()) {
      return new Legend("", "", rig.identity().name(), Words.NONE);
    }
    Words where = places.known(id) ? places.where(id) : Words.NONE;
    return new Legend(rig.codes().get(id), id, places.name(id), where);
  }

  private static String line(Legend legend) {
    return legend.place().empty() ? legend.name() : legend.name() + ", " + legend.place().plain();
  }
}
