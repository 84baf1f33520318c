/**
 * The relations of the bond-line model as they are shown. `tests/core/relations.test.ts` evaluates every one
 * of them by hand for one joint and holds the code to it: change a relation here, there and in core together.
 */
export interface Relation {
  readonly number: number;
  readonly tex: string;
  /** what it says, and how it is known */
  readonly says: string;
  readonly source?: string;
}
export interface Group {
  readonly title: string;
  readonly relations: readonly Relation[];
}

export const RELATIONS: readonly Group[] = [
  {
    title: 'Where the water goes',
    relations: [
      {
        number: 1,
        tex: 'C = \\frac{W}{\\rho}\\left(1 - \\frac{\\rho}{\\rho_f}\\right)',
        says: 'What the pores of the sheet can hold: its thickness, less the room that the fibre takes. A micrometre of pore holds a gram of water on each square metre.',
      },
      {
        number: 2,
        tex: 'f = \\min\\left(1,\\; f_1\\,\\eta^{-a}\\right)',
        says: 'How well the liquid follows water into pores. Thick liquids follow badly; the viscosity is in Pa·s. The form is ours, its two constants are fitted.',
      },
      {
        number: 3,
        tex: 'u_p = \\min\\left(C,\\; S_p f \\sqrt{\\tau}\\right), \\qquad u_b = S_b f \\sqrt{\\tau}, \\qquad \\tau = \\min(t, t_d)',
        says: 'What paper and board have drunk after t seconds. Four times the time takes in twice as much, until the paper is full.',
        source: 'washburn-1921',
      },
      {
        number: 4,
        tex: '\\min\\left(C,\\; S_p f\\sqrt{t_d}\\right) + S_b f\\sqrt{t_d} = \\alpha G (1-s)',
        says: 'Neither side can drink what the coat does not have: suction reaches only a share of its water, and at the moment when that has gone both sides stop.',
      },
      {
        number: 5,
        tex: 'e = \\beta\\,\\frac{(25 + 19 v)(x_s - x)\\cdot 1000}{3600}',
        says: 'What leaves through the sheet into the room each second, from the humidity of the air and of air that is full. Nothing leaves through a sheet that takes in no water.',
        source: 'evaporation-example',
      },
    ],
  },
  {
    title: 'When it grabs',
    relations: [
      {
        number: 6,
        tex: 'N = G\\,\\max\\left(0,\\; 1 - \\frac{s}{s_c}\\right)',
        says: 'The water that the coat has to lose before its film grabs: a mass balance between its solids now and its solids then.',
      },
      {
        number: 7,
        tex: 'p = \\min\\left(1,\\; \\max\\left(\\frac{u_p + u_b + e\\,t}{N},\\; g\\,\\frac{t}{t_g}\\right)\\right)',
        says: 'How far it has set, from 0 to 1. A hot glue sets by cooling as well, and has grabbed when it gels; for others the second term is nothing.',
      },
      {
        number: 8,
        tex: 'u_p + u_b + e\\,t_s = g\\,N',
        says: 'The slip time is the first moment at which this is so, or the moment of gelling when that is sooner. It is not followed past an hour.',
      },
    ],
  },
  {
    title: 'What gives when you lift it',
    relations: [
      {
        number: 9,
        tex: 'W_h = \\min\\left(W,\\; \\rho H\\right), \\qquad w = \\min\\left(1,\\; \\frac{u_p}{W_h\\,u_s}\\right)',
        says: 'Only the layer of paper next to the glue resists; behind it a thick, loose sheet splits. That layer is soaked when it holds so much water for each gram of fibre.',
      },
      {
        number: 10,
        tex: 'R_p = K\\,W_h\\,T\\left(1 - w\\,(1-r)\\right)',
        says: 'What the wet sheet bears: a share of its dry strength, falling with wetness to what it keeps when soaked.',
      },
      {
        number: 11,
        tex: 'R_b = B\\,b',
        says: 'What the face of the board bears.',
      },
      {
        number: 12,
        tex: 'F = \\left(c + (1-c) f\\right)\\left(F_0 + F_1\\,s\\,p^{\\,n}\\right)',
        says: 'The pull on a lifted corner: what a fresh coat pulls, and more as it sets. Thin liquid fills some of the hollows of an embossed sheet that a thick one bridges.',
      },
      {
        number: 13,
        tex: 'm_{\\mathrm{lift}} = \\frac{\\min(R_p, R_b)}{F}',
        says: 'The margin: the weaker side over the pull. Above 1 it lifts clean. Below 1 the weaker side gives: the paper tears, or the face of the board comes away.',
      },
    ],
  },
  {
    title: 'Whether it spreads',
    relations: [
      {
        number: 14,
        tex: '\\eta_0^{1/8} = 1 + \\sum_i \\theta_i z_i, \\qquad \\eta = \\eta_0\\left(1 - \\frac{\\varphi}{\\varphi_m}\\right)^{-2.5\\,\\varphi_m}',
        says: 'The viscosity of a mix is computed from what goes in the pot: thickeners by the eighth-root law (in mPa·s, with per cent by mass), particles by Krieger and Dougherty. That several thickeners simply add up is an estimate of ours.',
        source: 'krieger-dougherty-entropy',
      },
      {
        number: 15,
        tex: '\\eta_b = \\frac{\\eta}{1 + \\left(\\eta\\,\\dot\\gamma / \\tau\\right)^{k}}',
        says: 'Under the brush it is thinner than at rest (in Pa·s): a Cross law, held to sixteen published points of a cellulose ether; cooked starch thins by a power law instead. What counts is the end of brushing, when the coat has given water to the sheet: particles have come closer together by then, and the second half of (14) grows without limit as they touch.',
      },
      {
        number: 16,
        tex: 'm_{\\mathrm{spread}} = \\frac{(W/W_1)^{b}}{\\eta_b\\,d}',
        says: 'What the sheet bears over what the tool asks of it. It grows as a power of its weight; the power and the constant are fitted.',
      },
    ],
  },
  {
    title: 'Whether it holds, and lies flat',
    relations: [
      {
        number: 17,
        tex: 'm_{\\mathrm{hold}} = \\frac{G\\,s}{L}\\cdot\\frac{k_h}{k_t\\,\\min(2,\\max(0.7,(W/100)^{q/2}))\\;k_f\\,k_d}',
        says: 'The dry film over the least that a sound joint needs, times how well the adhesive holds on such a face; the task says how much it bears and how far that grows with the weight of the sheet; more is asked by use that bends, by damp, and by a weave, which touches only where its threads stand up. A film that could not form in the cold counts for less. A plain estimate of ours, not fitted to anything.',
      },
      {
        number: 18,
        tex: '\\varepsilon = \\lambda\\,\\varepsilon_0\\,\\min\\left(1,\\; \\frac{G(1-s)}{W u_s}\\cdot\\frac{S_p}{S_p + S_b}\\right) + \\frac{z\\,G\\,s}{Z}',
        says: 'How much the sheet wants to grow and shrink: its growth from dry to soaked, by the share of the water that it gets, and by what pressing until dry leaves of it. A film of starch, gelatine or ether draws in as it dries and adds its own pull, over the stiffness of the sheet; a vinyl film gives way.',
      },
      {
        number: 19,
        tex: '\\kappa = \\frac{6\\,\\varepsilon\\,(1+m)^2}{h\\left(3(1+m)^2 + (1+mn)\\left(m^2 + \\frac{1}{mn}\\right)\\right)}, \\qquad m_{\\mathrm{flat}} = \\frac{y\\,\\ell}{\\kappa\\,\\ell^2/8}',
        says: 'Two plies that grow by different amounts bend each other. The margin is the bow that is let pass, which is less where a print is mounted to be looked at, over the bow that comes. Where the other side is lined too, a share of the bow is left. On a ground that bends with use, the growth that is left after pressing is held against what shows as cockling.',
        source: 'timoshenko-1925',
      },
    ],
  },
  {
    title: 'From a margin to a chance',
    relations: [
      {
        number: 20,
        tex: 'x(u) = \\begin{cases} x_{\\mathrm{low}} + (x_{\\mathrm{mid}} - x_{\\mathrm{low}})\\sqrt{2u} & u < \\frac12 \\\\ x_{\\mathrm{high}} - (x_{\\mathrm{high}} - x_{\\mathrm{mid}})\\sqrt{2(1-u)} & u \\ge \\frac12 \\end{cases}',
        says: 'Every uncertain number is drawn from its range, the middle being likelier than the ends: on each side of it a triangle that is fullest at the middle, with half of all draws on either side.',
      },
      {
        number: 21,
        tex: 'P = \\frac{1}{J}\\sum_{j=1}^{J} \\frac{m_j^5}{1 + m_j^5}',
        says: 'The chance is the share of the draws that hold, softened by the doubt in the model itself: a margin of exactly 1 counts half. The fifth power is an estimate of ours, about what the fitting leaves over.',
      },
    ],
  },
];
