package plycrag.solve.guillotine;

/** What a sheet is or becomes: cut further, an item, or an offcut. */
public sealed interface Part permits Cut, CutItem, Offcut {}
