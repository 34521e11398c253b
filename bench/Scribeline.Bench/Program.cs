using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

namespace Scribeline.Bench;

internal static class Program
{
    // In this process: what is measured takes long enough, and nothing has to be built a second time.
    private static void Main(string[] typed) => BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(
        typed,
        DefaultConfig.Instance.AddJob(Job.ShortRun.WithIterationCount(10).WithToolchain(InProcessEmitToolchain.Instance)));
}
