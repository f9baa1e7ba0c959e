# Only what a pattern says of lengths; the program's own bundle of this name says more.
inches = { $quarters ->
    [1] { $whole }¼
    [2] { $whole }½
    [3] { $whole }¾
   *[other] { $whole }
    }
inches-belowOne = { $quarters ->
    [1] ¼
    [2] ½
   *[other] ¾
    }
