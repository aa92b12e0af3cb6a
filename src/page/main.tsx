import { render } from 'preact'
import example from '../../shared/examples/winter-fair.yaml?raw'
import { App } from './app.js'
import './page.css'

const room = document.getElementById('page')
if (room) render(<App example={example} />, room)
