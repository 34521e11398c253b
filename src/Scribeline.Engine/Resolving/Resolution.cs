using Scribeline.Engine.Motors;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Resolving;

/// <summary>A design resolved, as far as it goes.</summary>
/// <param name="Rocket">Null where the airframe cannot be.</param>
/// <param name="Motor">Null where none is given.</param>
/// <param name="Day">Null where what it needs is missing or wrong.</param>
/// <param name="Missing">What to type so that there is a day.</param>
/// <param name="Problems">What is wrong.</param>
public sealed record Resolution(Rocket? Rocket, Motor? Motor, Day? Day, ValueList<string> Missing, ValueList<Problem> Problems);
