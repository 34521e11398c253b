namespace Scribeline.Engine.Questions;

/// <summary>Where the builder stands when asking.</summary>
public enum Place
{
    /// <summary>Planning with parts on the table.</summary>
    Desk,

    /// <summary>Building.</summary>
    Bench,

    /// <summary>Ground-testing charges.</summary>
    Yard,

    /// <summary>At the range.</summary>
    Field,

    /// <summary>Back home with the altimeter's record.</summary>
    Log,
}
