// The progress is for a person who waits: none where the error stream goes to a file.
Console.OutputEncoding = System.Text.Encoding.UTF8;
return LowVoltage.Calc.Samples.ToleranceStudy.Sample.Run(args, Console.Out, Console.Error, showProgress: !Console.IsErrorRedirected);
