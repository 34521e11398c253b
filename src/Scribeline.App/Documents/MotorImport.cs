using System.Text;
using Scribeline.App.Commands;
using Scribeline.Engine.Quantities;
using Scribeline.Store;

namespace Scribeline.App.Documents;

/// <summary>A motor made from a two-column table of time and thrust and what its maker prints on it.</summary>
/// <param name="Name">As printed by its maker.</param>
/// <param name="Diameter">With unit.</param>
/// <param name="Length">With unit.</param>
/// <param name="LoadedMass">With unit.</param>
/// <param name="PropellantMass">With unit.</param>
/// <param name="Table">Lines of time in s and thrust in N.</param>
internal sealed record MotorImport(string Name, string Diameter, string Length, string LoadedMass, string PropellantMass, string Table)
{
    /// <summary>Writes the motor's two files into the folder motors. Nothing that is there is overwritten.</summary>
    /// <param name="folder">Folder that holds the designs' folders.</param>
    /// <returns>What to type for it in a design there, or what is wrong.</returns>
    public (string? Reference, ValueList<Problem> Problems) Write(string folder)
    {
        var problems = Check();
        if (problems.Count > 0) return (null, problems.ToValueList());
        var name = NewCommand.FolderName(Name);
        var home = Path.Combine(folder, "motors");
        var (motor, table) = (Path.Combine(home, name + ".yaml"), Path.Combine(home, name + ".csv"));
        try
        {
            if (File.Exists(motor) || File.Exists(table)) return (null, [new("", $"motors/{name} is there already and stays as it is.", "Type another name.")]);
            Directory.CreateDirectory(home);
            SafeWriting.Write(table, Table.ReplaceLineEndings("\n").TrimEnd() + "\n");
            SafeWriting.Write(motor, Yaml($"thrust: {name}.csv"));
            return ($"../motors/{name}.yaml", []);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return (null, [new("", $"The motor cannot be written: {failure.Message.TrimEnd('.')}.", "Start the workbench in a folder that may be written.")]);
        }
    }

    // Read the way a design would read it, before anything is written.
    private List<Problem> Check()
    {
        List<Problem> problems = [];
        if (NewCommand.FolderName(Name).Length is 0 or > 80 || Name.Any(char.IsControl)) problems.Add(new("name", "A motor's name has at least one letter or digit.", "Type it as printed, such as K521."));
        if (Table.Length > 500_000) problems.Add(new("thrust", "The table is larger than any motor's.", "Check what was copied."));
        else ThrustCsv.Read(Table, "thrust", problems);
        if (problems.Count > 0) return problems;
        var design = Starter.Text("Check");
        var whole = DesignText.Put(DesignText.Remove(design, "motor").Text, "motor", $"{{{Yaml("thrust: [[0 s, 1 N], [1 s, 1 N]]").TrimEnd().Replace("\n", ", ", StringComparison.Ordinal)}}}");
        if (whole.Problem is { } refused) return [refused];
        return [.. DesignFile.ReadText(whole.Text).Problems.Where(p => p.At.StartsWith("motor", StringComparison.Ordinal)).Select(p => p with { At = p.At[(p.At.IndexOf('.', StringComparison.Ordinal) + 1)..], Line = null, Column = null })];
    }

    private string Yaml(string thrust)
    {
        StringBuilder text = new();
        foreach (var (key, value) in new[] { ("name", Name), ("diameter", Diameter), ("length", Length), ("loaded mass", LoadedMass), ("propellant mass", PropellantMass) })
            text.Append(key).Append(": \"").Append(value.Trim().Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)).Append("\"\n");
        return text.Append(thrust).Append('\n').ToString();
    }
}
