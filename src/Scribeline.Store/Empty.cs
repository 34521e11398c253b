namespace Scribeline.Store; internal static class Empty { }
