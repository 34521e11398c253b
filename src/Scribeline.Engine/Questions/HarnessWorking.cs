using Scribeline.Engine.Separation;
using static System.Math;

namespace Scribeline.Engine.Questions;

/// <summary>Steps from the speed of two pieces to the peak tension of the harness between them.</summary>
internal static class HarnessWorking
{
    /// <summary>Peak tension of a harness that takes up the energy recorded as E_n, N.</summary>
    /// <param name="w">Where the steps go.</param>
    /// <param name="cord">How it stretches.</param>
    /// <param name="E">J.</param>
    /// <param name="n">Number of the symbols.</param>
    public static double Tension(Working w, StretchingCord cord, double E, int n)
    {
        (string, string)[] names = [("E", $"E_{n}"), ("k", $"k_{n}"), ("K", $"K_{n}"), ("Q", $"Q_{n}")];
        var k = w.Given($"k_{n}", cord.Soft, "N/m", "its stiffness at first", "design, or the cord table");
        var Q = double.IsPositiveInfinity(cord.Knee) ? double.PositiveInfinity : cord.Knee;
        if (E <= Q * Q / (2 * k)) return w.StepOf($"T_{n}", Sqrt(2 * k * E), "N", "its peak tension", "energy of a spring", names);
        w.Given($"Q_{n}", Q, "N", "load at which it stiffens", "woven nylon: a quarter of its strength, from memory");
        var K = w.Given($"K_{n}", cord.Stiff, "N/m", "its stiffness beyond", "cord table");
        return w.StepOf($"T_{n}", Sqrt((Q * Q) + (2 * K * (E - (Q * Q / (2 * k))))), "N", "its peak tension", "energy of a spring of two stiffnesses", names);
    }
}
