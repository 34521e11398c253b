namespace Scribeline.Engine.Airframe;

/// <summary>How two parts are held together.</summary>
public enum JointKind
{
    /// <summary>Glued; never lets go.</summary>
    Bonded,

    /// <summary>Screwed, to be opened on the bench only.</summary>
    Screwed,

    /// <summary>Held by shear pins; lets go when they are cut.</summary>
    Pinned,

    /// <summary>Held by friction alone.</summary>
    Sliding,
}

/// <summary>The meeting of a part with the next one aft.</summary>
/// <param name="Forward">Index of the part ahead; the part behind is the next.</param>
/// <param name="Kind">How it is held.</param>
/// <param name="Separable">Whether it is meant to let go in flight.</param>
/// <param name="Break">Station of the line where the outsides meet, m.</param>
/// <param name="Engagement">How far one slides into the other, m; 0 for a butt joint.</param>
/// <param name="ShoulderDiameter">Outside of what slides in, m.</param>
/// <param name="BoreDiameter">Inside of what it slides into, m.</param>
/// <param name="ShoulderAhead">Whether what slides in belongs to the part ahead.</param>
public sealed record Joint(
    int Forward, JointKind Kind, bool Separable, double Break, double Engagement, double ShoulderDiameter, double BoreDiameter, bool ShoulderAhead)
{
    /// <summary>Index of the part behind.</summary>
    public int Aft => Forward + 1;

    /// <summary>Diametral play, m; negative for an interference.</summary>
    public double Play => BoreDiameter - ShoulderDiameter;

    /// <summary>Engagement in calibres of the bore.</summary>
    public double Calibres => Engagement / BoreDiameter;

    /// <summary>Slope the joint can take within its play, rad: diametral play over engagement.</summary>
    public double PlayAngle => Engagement > 0 ? Math.Max(Play, 0) / Engagement : double.PositiveInfinity;

    /// <summary>Measures the meeting of two neighbours.</summary>
    /// <param name="parts">The stack.</param>
    /// <param name="forward">Index of the part ahead.</param>
    /// <param name="kind">How it is held; pinned and sliding joints are separable.</param>
    public static Joint Between(IReadOnlyList<Part> parts, int forward, JointKind kind)
    {
        (Part ahead, Part behind) = (parts[forward], parts[forward + 1]);
        bool separable = kind is JointKind.Pinned or JointKind.Sliding, fromAhead = ahead.Behind.Length >= behind.Ahead.Length;
        Shoulder shoulder = fromAhead ? ahead.Behind : behind.Ahead;
        Part taker = fromAhead ? behind : ahead;

        // At the middle of the engagement, where the taker surely is.
        double depth = Math.Min(shoulder.Length, taker.Length) / 2;
        double bore = 2 * (taker.BoreAt(fromAhead ? taker.Front + depth : taker.Rear - depth) ?? 0);
        return new(forward, kind, separable, ahead.Rear, shoulder.Length, shoulder.OuterDiameter, bore, fromAhead);
    }
}
