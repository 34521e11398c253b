using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store;

/// <summary>
/// Reads the motor, site and weather files that a design names. Names are relative to the file that names them; <c>..</c> may lead to
/// neighbours, but never out of the folder that holds the design's own folder, and links are not followed.
/// </summary>
internal static class OtherFiles
{
    internal static (RocketDesign Design, ValueList<string> Files) Join(RocketDesign design, string? path, List<Problem> problems)
    {
        List<string> files = [];
        var motor = Read(design.Motor, "motor", path, path, problems, files);
        if (motor is { Value: { } value })
        {
            var from = motor.File is null ? path : Path.Combine(Path.GetDirectoryName(path)!, motor.File);
            motor = motor with { Value = value with { Thrust = Thrust(value.Thrust, from, path, motor.File, problems, files) } };
        }

        return (design with
        {
            Motor = motor,
            Site = Read(design.Site, "site", path, path, problems, files),
            Weather = Read(design.Weather, "weather", path, path, problems, files),
        }, files.ToValueList());
    }

    private static FileOr<T>? Read<T>(FileOr<T>? held, string at, string? from, string? design, List<Problem> problems, List<string> files)
        where T : Placed
    {
        if (held?.File is not { } name) return held;
        if (Resolve(name, at, from, design, problems) is not { } file) return held;
        files.Add(file);
        List<Problem> own = [];
        T? value = null;
        if (SafeText.Read(file, own) is { } text && (YamlTree.Read(text, own) is var root && (root is not null || own.Count == 0)))
        {
            var (read, whole) = new Binder(own).Root<T>(root, at);
            if (whole && own.Count == 0) value = read;
        }

        problems.AddRange(own.Select(p => p.Line is null ? p with { At = at } : p with { File = name }));
        return held with { Value = value };
    }

    private static FileOr<ThrustTable> Thrust(FileOr<ThrustTable> held, string? from, string? design, string? motorFile, List<Problem> problems, List<string> files)
    {
        List<Problem> own = [];
        if (held.File is not { } name) return held;
        var file = Resolve(name, "motor.thrust", from, design, own);
        var text = file is null ? null : SafeText.Read(file, own);
        if (file is not null) files.Add(file);
        var table = text is null ? null : ThrustCsv.Read(text, "motor.thrust", own);
        problems.AddRange(own.Select(p => p.Line is null ? p with { At = "motor.thrust", File = motorFile } : p with { File = name }));
        return held with { Value = table };
    }

    /// <summary>The full name of a file named in another; null with a problem if it may not be read.</summary>
    private static string? Resolve(string name, string at, string? from, string? design, List<Problem> problems)
    {
        string? Fail(string message, string suggestion)
        {
            problems.Add(new(at, message, suggestion));
            return null;
        }

        if (from is null || design is null) return Fail($"'{name}' is a file, and this design is not one.", "Save the design first, or write the data in place.");
        if (name.Length > 200 || name.IndexOfAny(['\0', '\n', '*', '?', '"', '<', '>', '|']) >= 0) return Fail($"'{name}' cannot be a file's name.", "Write a name such as motors/j420.yaml.");
        if (name.Contains('\\', StringComparison.Ordinal)) return Fail($"'{name}' has backslashes.", $"Write {name.Replace('\\', '/')}, which works everywhere.");
        if (Path.IsPathRooted(name) || name.Contains(':', StringComparison.Ordinal) || name.StartsWith('~'))
            return Fail($"'{name}' is not relative to this file.", "Keep the file near the design and name it from there, such as ../motors/j420.yaml.");
        var folder = Path.GetDirectoryName(Path.GetFullPath(design))!;
        var parent = Path.GetDirectoryName(folder);
        var root = parent is null || Path.GetDirectoryName(parent) is null ? folder : parent;
        var file = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Path.GetFullPath(from))!, name));
        if (!file.StartsWith(root + Path.DirectorySeparatorChar, StringComparison.Ordinal))
            return Fail($"'{name}' leads out of the folder that holds the design's folder.", "Keep the file in the design's folder or beside it.");
        for (var step = file; step is not null && step.Length > root.Length; step = Path.GetDirectoryName(step))
        {
            if ((File.Exists(step) || Directory.Exists(step)) && File.GetAttributes(step).HasFlag(FileAttributes.ReparsePoint))
                return Fail($"'{name}' leads through a link.", "Put the file itself there.");
        }

        return file;
    }
}
