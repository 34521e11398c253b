using Scribeline.Engine.Airframe;
using Scribeline.Engine.Recovery;
using Scribeline.Engine.Separation;
using Scribeline.Engine.Tables;
using static System.Math;

namespace Scribeline.Engine.Questions;

/// <summary>One end of a cord: links, what it is tied to, and what carries that into the airframe.</summary>
internal sealed class LoadPathEnd(LoadPathSurvey survey, Study study, Working w, Harness harness, Anchor anchor, PathPull pull)
{
    private const string Roark = "Young and Budynas, Roark's Formulas for Stress and Strain, 7th ed., rim free to turn";

    public void Walk()
    {
        foreach (var link in study.Rocket.Rigging.Links.Where(l => l.Joins == anchor.Tie)) survey.Link(harness.Name, link, anchor.Tie, pull);
        Hardware();
        var part = study.Vehicle.Parts[anchor.Part];
        if (part.Fittings.OfType<BulkPlate>().FirstOrDefault(f => f.Name == anchor.Tie) is { } plate)
        {
            Plate(part, plate);
            if (study.Rocket.Separation.Rods.FirstOrDefault(r => r.Part == anchor.Part) is { } rods) Rods(rods);
            else Bond($"{plate.Name}: bond of its rim", plate.Diameter, plate.Thickness, plate.Material.Name);
        }
        else if (part.Fittings.OfType<CentringRing>().ToArray() is { Length: > 0 } rings && anchor.Tie == Design.DesignChecks.Motor)
        {
            Bond("Rings of the motor mount: bond", rings.Max(r => r.OuterDiameter), rings.Sum(r => r.Thickness), rings[0].Material.Name);
        }

        Edge();
        Joints();
    }

    // As with a working load: twice the pull that presses the edge with a quarter of its strength, the cord bent by 60°.
    private void Edge()
    {
        if (study.JointOf(anchor.Cord) is not { } joint || TubeEdge.Of(study.Vehicle, joint, anchor) is not { } edge) return;
        var name = $"edge of {edge.Name}, cut by {harness.Name}";
        if (study.Rocket.Rigging.Cords[anchor.Cord].Width is not { } width)
        {
            survey.Lacks(harness.Name, name, pull, $"{harness.At}.width: of {harness.Name}, laid flat");
            return;
        }

        var id = survey.NextId;
        var b = w.Given($"b_{id}", width, "m", $"width of {harness.Name}", "design, or the cord table");
        var t = w.Given($"t_{id}", edge.Wall, "m", $"wall of {edge.Name}", "design");
        var S = w.Given($"S_{id}", edge.Strength, "Pa", "edgewise compressive strength of the wall", edge.Source);
        survey.Judge(harness.Name, name, pull, w.StepOf($"C_{id}", 2 * (S / 4) * b * t / (2 * Sin(PI / 6)), "N", $"{name}: capacity, twice what a quarter of that bears at a bend of 60°", "common practice", [("S", $"S_{id}"), ("b", $"b_{id}"), ("t", $"t_{id}")]), edge.Source);
    }

    private void Hardware()
    {
        var name = $"{anchor.Hardware ?? "hardware"} at {anchor.Tie}";
        if (anchor.WorkingLoad is { } stamped) survey.Add(harness.Name, name, pull, survey.Rated(stamped, name, "design"), "design");
        else if (anchor.Row is { WorkingLoad: { } tabled } row) survey.Add(harness.Name, name, pull, survey.Rated(tabled, name, row.Source), row.Source);
        else if (anchor.Row is { Legs: > 0, Thread: { } thread } bolt && ThreadGeometry.Of(thread) is { } geometry)
        {
            var id = survey.NextId;
            var N = w.Given($"N_{id}", bolt.Legs, "", $"legs of {name}", bolt.Source);
            var A = w.Given($"A_{id}", geometry.TensileArea, "m²", "stress area of one", "ASME B1.1, or ISO 965");
            var S = w.Given($"S_{id}", Fastening.PlainSteel, "Pa", "tensile strength of plain steel", "ISO 898-1 class 4.8, from memory");
            survey.Judge(harness.Name, name, pull, w.StepOf($"C_{id}", N * A * S, "N", $"{name}: capacity", "legs share equally", [("N", $"N_{id}"), ("A", $"A_{id}"), ("S", $"S_{id}")]), bolt.Source);
        }
        else
        {
            var what = anchor.Hardware is null ? "hardware, what the cord ties to, on a plate or the motor" : $"hardware load: of {anchor.Hardware}, as stamped on it; a bent-wire eye has none";
            survey.Lacks(harness.Name, name, pull, $"{anchor.At}: {anchor.Tie}: {what}");
        }
    }

    private void Plate(Part part, BulkPlate plate)
    {
        var name = $"{plate.Name}: bending";
        var sheet = PlateMaterial.Find(plate.Material.Name, plate.Thickness);
        if ((sheet?.Bending ?? plate.Material.Strength) is not { } bending)
        {
            survey.Lacks(harness.Name, name, pull, $"materials: strength of {plate.Material.Name}, for {plate.Name}");
            return;
        }

        if (anchor.Washer is not { } washer)
        {
            survey.Lacks(harness.Name, name, pull, $"{anchor.At}.washer: outside diameter of the washers on {plate.Name}");
            return;
        }

        var id = survey.NextId;
        (string, string)[] names = [("a", $"a_{id}"), ("t", $"t_{id}"), ("r", $"r0_{id}"), ("v", $"v_{id}"), ("S", $"S_{id}"), ("k", $"k_{id}"), ("s", $"s_{id}"), ("d", $"d_{id}"), ("X", $"X_{id}"), ("Y", $"Y_{id}")];
        var a = w.Given($"a_{id}", plate.Diameter / 2, "m", $"radius of {plate.Name}", "design");
        var t = w.Given($"t_{id}", plate.Thickness, "m", "its thickness", "design");
        var v = w.Given($"v_{id}", sheet?.Poisson ?? 0.3, "", "Poisson's ratio", sheet?.Source ?? "common practice");
        var r = w.Given($"r0_{id}", new PlateBending(plate.Diameter / 2, plate.Thickness, v).Acting(washer / 2), "m", "radius one washer bears on", "Roark, from the washer");
        var S = w.Given($"S_{id}", bending, "Pa", "bending strength in its weaker direction", sheet?.Source ?? plate.Material.Source);
        var k = w.Given($"k_{id}", sheet?.Divisor ?? PlateMaterial.UnknownDivisor, "", "divisor of the strength", "common practice");
        var X = w.StepOf($"X_{id}", S / k * t * t / 6 * 4 * PI / (((1 + v) * Log(a / r)) + 1), "N", "pull that bends it so, all on one washer in the middle", Roark, names);
        var C = X;
        if (part.Fittings.OfType<Airframe.Rods>().FirstOrDefault() is { Count: 2, CircleRadius: > 0 } rods)
        {
            var s = w.Given($"s_{id}", 2 * rods.CircleRadius, "m", "between its two rods", "design");
            var d = w.Given($"d_{id}", rods.Diameter, "m", "diameter of a rod", "design");
            var Y = w.StepOf($"Y_{id}", S / k * (2 * (a - d)) * t * t / 6 * 4 / s, "N", "pull that bends it so, drawn off its rim and held by the rods", "beam with its load in the middle", names);
            C = w.StepOf($"C_{id}", Min(X, Y), "N", $"{name}: capacity", "definition", names);
        }
        else
        {
            w.StepOf($"C_{id}", X, "N", $"{name}: capacity", "definition", names);
        }

        survey.Judge(harness.Name, name, pull, C, sheet?.Source ?? plate.Material.Source);
    }

    private void Rods(RodRow rods)
    {
        var name = $"{anchor.Tie}: rods {rods.Name}";
        if (rods.Strength is not { } strength)
        {
            survey.Lacks(harness.Name, name, pull, $"materials: strength of the rods of {study.Vehicle.Parts[anchor.Part].Name}");
            return;
        }

        var id = survey.NextId;
        var N = w.Given($"N_{id}", Max(rods.Count - 1, 1), "", "rods that count: one less than there are, for nuts are never even", "common practice");
        var A = w.Given($"A_{id}", rods.Thread.TensileArea, "m²", "stress area of one", "ASME B1.1, or ISO 965");
        var S = w.Given($"S_{id}", strength, "Pa", "its tensile strength", rods.Source);
        survey.Judge(harness.Name, name, pull, w.StepOf($"C_{id}", N * A * S, "N", $"{name}: capacity", "definition", [("N", $"N_{id}"), ("A", $"A_{id}"), ("S", $"S_{id}")]), rods.Source);
    }

    private void Bond(string name, double diameter, double height, string material) => Bond(name, diameter, height, material, pull);

    private void Bond(string name, double diameter, double height, string material, PathPull on)
    {
        var id = survey.NextId;
        var d = w.Given($"d_{id}", diameter, "m", "diameter of the bond", "design");
        var h = w.Given($"h_{id}", Min(height, JointBond.LongestCounted), "m", "bonded edge that counts, 25 mm at most", "design; common practice");
        var S = w.Given($"S_{id}", JointBond.On(material), "Pa", "design shear strength of epoxy", "common practice");
        survey.Judge(harness.Name, name, on, w.StepOf($"C_{id}", PI * d * h * S, "N", $"{name}: capacity", "definition", [("d", $"d_{id}"), ("h", $"h_{id}"), ("S", $"S_{id}")]), "design shear strength of epoxy: common practice");
    }

    // Joints of the piece that must not let go carry what lies past them.
    private void Joints()
    {
        var opened = study.JointOf(anchor.Cord) is { } own ? study.OpenedBefore(own).Append(own) : [];
        var piece = study.Vehicle.PiecesAfter(opened).First(p => p.Has(anchor.Part));
        foreach (var joint in study.Vehicle.Joints.Where(j => !j.Separable && j.Forward >= piece.First && j.Forward < piece.Last))
        {
            var past = anchor.Part <= joint.Forward ? new Piece(joint.Forward + 1, piece.Last) : new Piece(piece.First, joint.Forward);
            var label = $"{study.Vehicle.Parts[joint.Forward].Name} to {study.Vehicle.Parts[joint.Aft].Name}";
            var id = survey.NextId;
            var b = w.Given($"b_{id}", study.PieceProperties(past).Mass, "kg", $"mass past {label}", "question weight");
            var m = w.Given($"m_{id}", study.PieceProperties(piece).Mass, "kg", $"mass of {study.Vehicle.NameOf(piece)}", "question weight");
            var F = pull.Force;
            var on = pull with { Force = w.StepOf($"J_{id}", F * b / m, "N", $"pull on {label}", "Newton's second law on what lies past it", [("F", pull.Symbol), ("b", $"b_{id}"), ("m", $"m_{id}")]), Symbol = $"J_{id}" };
            if (study.Rocket.Separation.Bonds.FirstOrDefault(x => x.Joint == joint.Forward) is { Length: > 0 } bond)
                Bond($"{label}: bond, pulled by {harness.Name} at {anchor.Tie}", joint.BoreDiameter, bond.Length, "", on);
            if (study.Rocket.Separation.Screws.FirstOrDefault(x => x.Joint == joint.Forward) is { } screws)
                Screws($"{label}: screws, pulled by {harness.Name} at {anchor.Tie}", screws, on);
        }
    }

    private void Screws(string name, ScrewRow screws, PathPull on)
    {
        if (screws.Strength is not { } strength)
        {
            survey.Lacks(harness.Name, name, on, $"{name}: strength of the screws");
            return;
        }

        var id = survey.NextId;
        (string, string)[] names = [("N", $"N_{id}"), ("A", $"A_{id}"), ("S", $"S_{id}"), ("d", $"d_{id}"), ("t", $"t_{id}")];
        var N = w.Given($"N_{id}", screws.Count, "", $"screws {screws.Name}", "design");
        var A = w.Given($"A_{id}", screws.Thread.MinorArea, "m²", "root area of one", "ASME B1.1, or ISO 68-1");
        var S = w.Given($"S_{id}", strength, "Pa", "tensile strength", screws.Source);
        if (study.Vehicle.Parts[study.Vehicle.Joints[screws.Joint].ShoulderAhead ? screws.Joint + 1 : screws.Joint] is Tube { OuterDiameter: var outside, InnerDiameter: var inside })
        {
            var d = w.Given($"d_{id}", screws.Thread.MajorDiameter, "m", "diameter of one", "ASME B1.1, or ISO 261");
            var t = w.Given($"t_{id}", (outside - inside) / 2, "m", "wall they bear on", "design");
            survey.Judge(harness.Name, name, on, w.StepOf($"C_{id}", N * Min(0.6 * A * S, d * t * 200000000), "N", $"{name}: capacity, in shear or by bearing of the wall at 200 MPa", "0.6 of the tensile strength: common practice; bearing: assumption", names), screws.Source);
            return;
        }

        survey.Judge(harness.Name, name, on, w.StepOf($"C_{id}", 0.6 * N * A * S, "N", $"{name}: capacity in shear", "0.6 of the tensile strength: common practice", names), screws.Source);
    }
}
