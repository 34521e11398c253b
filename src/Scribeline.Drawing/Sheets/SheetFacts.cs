namespace Scribeline.Drawing.Sheets;

/// <summary>What stands at the foot of every sheet, so that a loose page can be told from any other.</summary>
/// <param name="Design">Name of the rocket.</param>
/// <param name="Version">Of the program.</param>
/// <param name="Fingerprint">Of the design and the files it names.</param>
public sealed record SheetFacts(string Design, string Version, string Fingerprint);
