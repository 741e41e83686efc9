return LowVoltage.Calc.Samples.ShortCircuit.Sample.Run(args, Console.Out, Console.Error);
