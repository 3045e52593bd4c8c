console.log('bundle: nothing yet')
