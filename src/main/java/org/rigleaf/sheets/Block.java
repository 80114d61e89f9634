package org.rigleaf.sheets;

/** A part of a topic; its kind names the template that prints it. */
public sealed interface Block
    permits FindingsBlock,
        ProcedureBlock,
        FiguresBlock,
        TableBlock,
        CautionsBlock,
        DrawingBlock,
        LegendBlock,
        LinesBlock,
        NotesBlock,
        FillBlock,
        PlacesBlock,
        CalendarBlock,
        FaultBlock,
        SymptomsBlock,
        PhotosBlock {
  /** Lower-case word of the kind. */
  String kind();
}
