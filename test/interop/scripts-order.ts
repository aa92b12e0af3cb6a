/** An order whose names and notes leave Western European letters: every script that is lettered. */
export const SCRIPTS_ORDER = `
title: Зимовий ярмарок біля озера
jigs: []
stars:
  - { name: Избушка у озера, note: "Łódź, Ẵ Ặ, ⌀ 12 − ½ × ⅜, 3′ 2″", points: 5, tip-angle: 45, across: 200, backing: { inset: 10 } }
  - { name: Ψαρόβαρκα στη λίμνη, note: Փոքր նավակ Սևանում, regular: 6/2, across: 160, backing: { shape: disc, inset: 6 } }
  - { name: ნავი ტბაზე, note: fi ffl AVATo Ђурђевдан, points: 8, tip-angle: 40, across: 180, backing: { shape: polygon, inset: 6 } }
`
