namespace Scribeline.Store.Logbooks;

/// <summary>A shot of the ground tests, as the logbook keeps it.</summary>
/// <param name="Number">Within the logbook; a shot keeps it for good.</param>
/// <param name="Body">The shot as it would stand under <c>records: shots</c> of the design: see <see cref="ShotText"/>.</param>
/// <param name="At">When it was recorded.</param>
/// <param name="Out">Whether it was taken out; it stays in the logbook and can be put back.</param>
public sealed record LoggedShot(long Number, string Body, DateTimeOffset At, bool Out);
