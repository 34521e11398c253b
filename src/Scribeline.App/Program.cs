using Scribeline.App.Commands;
using Scribeline.App.Terminal;

namespace Scribeline.App;

internal static class Program
{
    private static Task<int> Main(string[] typed) => CommandLine.Run(typed, Screen.OfProcess());
}
