using Scribeline.Engine.Questions.Bench;
using Scribeline.Engine.Questions.Desk;
using Scribeline.Engine.Questions.Field;
using Scribeline.Engine.Questions.Logs;
using Scribeline.Engine.Questions.Yard;

namespace Scribeline.Engine.Questions;

/// <summary>Every question the program answers, in the order a builder would ask them.</summary>
public static class Questionnaire
{
    /// <summary>The questions of the flight and the landing, whose headlines the weather moves.</summary>
    public static IReadOnlyList<Question> Flight { get; } =
    [
        new ThrustToWeight(), new RailExit(), new Stable(), new Settles(), new HowHigh(), new HowFast(), new Flutter(), new Delay(), new Descends(), new LandsSoft(),
    ];

    /// <summary>The questions of coming apart.</summary>
    public static IReadOnlyList<Question> Apart { get; } =
    [
        new StaysTogether(), new HoldsThroughDrogue(), new LetsGo(), new BurstsNothing(), new Breathes(), new BaysVent(), new Sequence(), new Fires(),
    ];

    /// <summary>The questions of coming down under canopies and cords.</summary>
    public static IReadOnlyList<Question> Down { get; } = [new Opens(), new LoadPath(), new Cords()];

    /// <summary>The questions of failures, asked once for a design: each flies it many times over.</summary>
    public static IReadOnlyList<Question> Failing { get; } = [new IfItFails()];

    /// <summary>The questions of the bench.</summary>
    public static IReadOnlyList<Question> Making { get; } = [new HolesClear(), new PlatesClear(), new Templates(), new Bonds(), new BuildOrder(), new AsBuilt()];

    /// <summary>The questions of the yard.</summary>
    public static IReadOnlyList<Question> Testing { get; } = [new TestPlan(), new TestSays()];

    /// <summary>The questions of where it comes down.</summary>
    public static IReadOnlyList<Question> Landing { get; } = [new LandsInside(), new Aim()];

    /// <summary>The questions of the field; the card comes last, for it tells of all others.</summary>
    public static IReadOnlyList<Question> AtTheRange { get; } = [new Allowed(), new KeepBack(), .. Landing, new Today(), new Checklist(), new Card()];

    /// <summary>The questions of a recorded flight.</summary>
    public static IReadOnlyList<Question> Flown { get; } = [new WhatHappened(), new AsPredicted(), new Teaches()];

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Question> All { get; } =
        [new Weight(), new Engagement(), new Stack(), new Packs(), .. Flight, .. Apart, .. Down, .. Failing, .. Making, .. Testing, .. AtTheRange, .. Flown];

    /// <summary>The question with this id, or null.</summary>
    public static Question? Named(string id) => All.FirstOrDefault(q => q.Id == id);
}
