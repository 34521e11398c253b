namespace Scribeline.Engine.Quantities;

/// <summary>How a value is known, weakest first. An answer's basis is the weakest among the inputs that matter.</summary>
public enum Basis
{
    /// <summary>Computed from drawings, tables or a guess.</summary>
    Estimated,

    /// <summary>Weighed or measured on the part itself.</summary>
    Measured,

    /// <summary>Seen in a ground test.</summary>
    Tested,

    /// <summary>Seen in a flight.</summary>
    Flown,
}
