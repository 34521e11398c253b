using Scribeline.Engine.Quantities;

namespace Scribeline.Store.Logbooks;

/// <summary>A flight in the logbook.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Flown">When it was flown, in the builder's words; may be empty.</param>
/// <param name="Words">A note; may be empty.</param>
/// <param name="File">Name of the altimeter's file.</param>
/// <param name="Columns">What the builder said of its columns.</param>
/// <param name="Added">When it was added.</param>
public sealed record LoggedFlight(long Number, string Flown, string Words, string File, ValueList<string> Columns, DateTimeOffset Added);
