using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions;

/// <summary>A picture's data: what a face draws when people would rather look than read.</summary>
/// <param name="Title">In plain words.</param>
/// <param name="Across">Axis across.</param>
/// <param name="Up">Axis up; every series shares it.</param>
/// <param name="Series">Lines.</param>
/// <param name="Marks">Named moments on the axis across.</param>
/// <param name="Bound">A limit to draw across, on the axis up; null for none.</param>
public sealed record Plot(string Title, Axis Across, Axis Up, ValueList<Series> Series, ValueList<Mark> Marks, double? Bound = null);

/// <summary>An axis.</summary>
/// <param name="Name">Plain words.</param>
/// <param name="Unit">What is measured; values are SI.</param>
public sealed record Axis(string Name, Unit Unit);

/// <summary>A line of a plot.</summary>
/// <param name="Name">For the legend.</param>
/// <param name="X">Values across, SI.</param>
/// <param name="Y">Values up, SI, as many.</param>
public sealed record Series(string Name, ValueList<double> X, ValueList<double> Y);

/// <summary>A named moment.</summary>
/// <param name="Name">Plain words.</param>
/// <param name="X">Where on the axis across, SI.</param>
public sealed record Mark(string Name, double X);
