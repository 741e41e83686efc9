using System.Diagnostics.CodeAnalysis;

[assembly: SuppressMessage("Globalization", "CA1305", Justification = "Our parsers are invariant by default, which is what these tests check.")]
