package plycrag.layout.nest.guillotine;

/** What a sheet is or becomes: cut further, an item, or an offcut. */
public sealed interface Part permits Cut, LaidItem, Offcut {}
