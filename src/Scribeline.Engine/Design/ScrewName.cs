using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Design;

/// <summary>A screw by thread and material, such as <c>#2-56 nylon</c>.</summary>
/// <param name="Thread">Its thread.</param>
/// <param name="Material">What it is made of, as typed; empty where not said.</param>
public sealed record ScrewName(ThreadName Thread, string Material) : IReadable<ScrewName>
{
    /// <inheritdoc/>
    public static ValueList<string> Examples => ["#2-56 nylon", "M3 nylon", "6-32 steel"];

    /// <inheritdoc/>
    public static Reading<ScrewName> Read(string text, string at = "")
    {
        var (size, material) = text.Trim().Split(' ', 2) is [var first, var rest] ? (first, rest.Trim()) : (text.Trim(), "");
        return ThreadName.Read(size).Select(thread => new ScrewName(thread, material));
    }

    /// <inheritdoc/>
    public override string ToString() => $"{Thread} {Material}".TrimEnd();
}
