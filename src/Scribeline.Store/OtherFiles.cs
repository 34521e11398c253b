using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using YamlDotNet.Core;

namespace Scribeline.Store;

/// <summary>
/// Reads the motor, site and weather files that a design names. Names are relative to the file that names them; <c>..</c> may lead to
/// neighbours, but never out of the folder that holds the design's own folder, and links are not followed.
/// </summary>
/// <param name="path">The design file; null where the design is not one.</param>
/// <param name="held">Texts that count in place of what is on the disk, by full name.</param>
/// <param name="problems">Takes the problems.</param>
internal sealed class OtherFiles(string? path, IReadOnlyDictionary<string, string> held, List<Problem> problems)
{
    private readonly List<NamedFile> files = [];

    /// <summary>The files that were named and may be read, there or not.</summary>
    internal ValueList<NamedFile> Files => files.ToValueList();

    /// <summary>Where each path begins in the file that holds it.</summary>
    internal Dictionary<string, (string? File, Mark Mark)> Places { get; } = [];

    /// <summary>The design with what its files hold.</summary>
    internal RocketDesign Join(RocketDesign design)
    {
        var motor = Read(design.Motor, "motor");
        if (motor is { Value: { } value })
        {
            var from = motor.File is null ? path : Path.Combine(Path.GetDirectoryName(path)!, motor.File);
            motor = motor with { Value = value with { Thrust = Thrust(value.Thrust, from, motor.File) } };
        }

        var site = Read(design.Site, "site");
        if (site is { Value: { Boundary: { File: not null } boundary } field })
        {
            var from = site.File is null ? path : Path.Combine(Path.GetDirectoryName(path)!, site.File);
            site = site with { Value = field with { Boundary = Outline(boundary, from, site.File) } };
        }

        return design with { Motor = motor, Site = site, Weather = Read(design.Weather, "weather") };
    }

    /// <summary>The full name of a file that a design may name from its folder; null with a problem if it may not.</summary>
    internal static string? Resolve(string name, string design, List<Problem> problems) => Resolve(name, "", design, design, problems);

    private FileOr<T>? Read<T>(FileOr<T>? named, string at)
        where T : Placed
    {
        if (named?.File is not { } name) return named;
        if (Resolve(name, at, path, path, problems) is not { } file) return named;
        List<Problem> own = [];
        T? value = null;
        var text = Text(file, own);
        files.Add(new(at, name, file, text));
        if (text is not null && (YamlTree.Read(text, own) is var root && (root is not null || own.Count == 0)))
        {
            var binder = new Binder(own);
            var (read, whole) = binder.Root<T>(root, at);
            foreach (var (place, mark) in binder.Places) Places.TryAdd(place, (name, mark));
            if (whole && own.Count == 0) value = read;
        }

        problems.AddRange(own.Select(p => p.Line is null ? p with { At = at } : p with { File = name }));
        return named with { Value = value };
    }

    private string? Text(string file, List<Problem> own) =>
        held.TryGetValue(file, out var text) ? SafeText.Checked(text, Path.GetFileName(file), own) : SafeText.Read(file, own);

    private FileOr<ThrustTable> Thrust(FileOr<ThrustTable> named, string? from, string? motorFile)
    {
        List<Problem> own = [];
        if (named.File is not { } name) return named;
        var file = Resolve(name, "motor.thrust", from, path, own);
        var text = file is null ? null : Text(file, own);
        if (file is not null) files.Add(new("motor.thrust", name, file, text));
        var table = text is null ? null : ThrustCsv.Read(text, "motor.thrust", own);
        problems.AddRange(own.Select(p => p.Line is null ? p with { At = "motor.thrust", File = motorFile } : p with { File = name }));
        return named with { Value = table };
    }

    private FileOr<OutlineDesign> Outline(FileOr<OutlineDesign> named, string? from, string? siteFile)
    {
        const string at = "site.boundary";
        List<Problem> own = [];
        var file = Resolve(named.File!, at, from, path, own);
        var text = file is null ? null : Text(file, own);
        if (file is not null) files.Add(new(at, named.File!, file, text));
        var areas = text is null ? [] : OutlineFile.Read(named.File!, text, at, own);
        problems.AddRange(own.Select(p => p.Line is null ? p with { At = at, File = siteFile } : p with { File = named.File }));
        return named with { Value = own.Count > 0 ? null : new OutlineDesign { At = at, Areas = areas } };
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
